import { stopWords } from '../../order/cautions.ts';
import { extentOf, type TemplatePart } from '../../order/template/part.ts';
import type { Printout } from '../page/printout.ts';
import { SCALE_BARS, scaleBars } from '../page/scale-bars.ts';
import type { Sheet } from '../page/sheet.ts';
import { cautionsOf, printoutFor, type SheetInput } from '../sheet-input.ts';
import { drawTile } from './draw-tile.ts';
import { templatesOf } from './templates-of.ts';
import { type Size, type Tile, tilesOf } from './tiles.ts';
import { turned } from './turned.ts';

/** Height of the words over a template, the bars included, mm. */
const HEAD = 15.5 + SCALE_BARS;

const sizeOf = (part: TemplatePart): Size & { readonly x0: number; readonly y0: number } => {
  const { x0, y0, x1, y1 } = extentOf(part);
  return { x0, y0, width: x1 - x0, height: y1 - y0 };
};

const pagesOf = (part: TemplatePart, window: Size): number => tilesOf(sizeOf(part), window).length;

/** The part as it takes the fewest pages: upright, or turned a quarter. */
function laid(part: TemplatePart, window: Size): { readonly part: TemplatePart; readonly isTurned: boolean } {
  const other = turned(part);
  return pagesOf(other, window) < pagesOf(part, window)
    ? { part: other, isTurned: true }
    : { part, isTurned: false };
}

function tileWords({ across, down, ofAcross, ofDown }: Tile): string {
  if (ofAcross * ofDown === 1) return '';
  const where = [
    ...(ofAcross > 1 ? [`${across} of ${ofAcross} from the left`] : []),
    ...(ofDown > 1 ? [`${down} of ${ofDown} from the top`] : []),
  ].join(', ');
  return ` Piece ${where}: lay the crosses of the seams on one another.`;
}

function head(sheet: Sheet, part: TemplatePart, tile: Tile, isTurned: boolean): void {
  const { x, y, width } = sheet.area;
  const at = sheet.text(part.title, x, y, { style: 'page' }) + 0.5;
  sheet.text(`${part.says}${isTurned ? ' Turned a quarter to the left.' : ''}${tileWords(tile)}`, x, at, {
    style: 'small',
    width,
  });
  scaleBars(sheet, x, y + HEAD - SCALE_BARS);
}

/** Shims, wedge, feet, plates and holes at true size, in pieces where they are larger than a page. */
export function templateSheets(input: SheetInput): Printout {
  const printout = printoutFor(input, 'templates', stopWords(cautionsOf(input), 'sheet'));
  const { parts, unanswered } = templatesOf(input);
  for (const whole of parts) {
    let sheet = printout.sheet();
    const window = { width: sheet.area.width, height: sheet.area.height - HEAD };
    const { part, isTurned } = laid(whole, window);
    for (const [i, tile] of tilesOf(sizeOf(part), window).entries()) {
      if (i > 0) sheet = printout.sheet();
      sheet.scale = '1:1';
      head(sheet, part, tile, isTurned);
      drawTile(sheet, part, tile, sheet.area.x, sheet.area.y + HEAD);
    }
  }
  if (unanswered.length > 0 || parts.length === 0) {
    const sheet = printout.sheet();
    const { x, width } = sheet.area;
    let y = sheet.text('What has no template yet', x, sheet.area.y, { style: 'page' }) + 2;
    for (const why of unanswered) y = sheet.text(why, x, y, { width }) + 1;
  }
  return printout.finish();
}
