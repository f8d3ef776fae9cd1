import type { Spot, TemplatePart } from '../../order/template/part.ts';
import { LINE } from '../marks/mark.ts';
import { circle, type Place, rectangle, straight } from '../marks/outline.ts';
import type { Sheet } from '../page/sheet.ts';
import type { Tile } from './tiles.ts';
import { OVERLAP } from './tiles.ts';

/** How far the cross in a hole reaches past its edge, mm. */
const CROSS = 3;
const SEAM_DASH = [2, 1.5];
const AXIS_DASH = [6, 1.5, 1, 1.5];

/** Seams with the pages beside: a dashed line through crosses that come to lie on one another. */
function seams(sheet: Sheet, tile: Tile, x: number, y: number): void {
  const [width, height] = [tile.x1 - tile.x0, tile.y1 - tile.y0];
  const cross = (cx: number, cy: number): void => {
    sheet.line(cx - 3, cy, cx + 3, cy);
    sheet.line(cx, cy - 3, cx, cy + 3);
  };
  // The word stands beside the line, for a centreline may lie on it, and on the side that has room on the page.
  const upright = (at: number, side: 'left' | 'right'): void => {
    sheet.line(at, y, at, y + height, { line: LINE.axis, dash: SEAM_DASH });
    for (const share of [0.15, 0.85]) cross(at, y + share * height);
    if (side === 'left') sheet.text('seam', at - 1.5, y + 1, { style: 'label', align: 'right' });
    else sheet.text('seam', at + 1.5, y + 1, { style: 'label' });
  };
  const level = (at: number): void => {
    sheet.line(x, at, x + width, at, { line: LINE.axis, dash: SEAM_DASH });
    for (const share of [0.15, 0.85]) cross(x + share * width, at);
    sheet.text('seam', x + 1, at - 4.5, { style: 'label' });
  };
  if (tile.across > 1) upright(x + OVERLAP, 'right');
  if (tile.across < tile.ofAcross) upright(x + width - OVERLAP, 'left');
  if (tile.down > 1) level(y + OVERLAP);
  if (tile.down < tile.ofDown) level(y + height - OVERLAP);
}

/** One page's piece of a part at true size, its top left corner at (x, y) of the sheet. */
export function drawTile(sheet: Sheet, part: TemplatePart, tile: Tile, x: number, y: number): void {
  const clip = rectangle(x, y, tile.x1 - tile.x0, tile.y1 - tile.y0);
  const at = (spot: Spot): Place => [x + spot.x - tile.x0, y + tile.y1 - spot.y];
  const isIn = ({ x: sx, y: sy }: Spot): boolean =>
    sx >= tile.x0 && sx <= tile.x1 && sy >= tile.y0 && sy <= tile.y1;
  for (const spots of part.outlines)
    sheet.outline(straight(spots.map(at), true), { line: LINE.outline }, clip);
  for (const [from, to] of part.lines)
    sheet.outline(straight([at(from), at(to)]), { line: LINE.axis, dash: AXIS_DASH }, clip);
  for (const hole of part.holes) {
    const [cx, cy] = at(hole);
    const reach = hole.diameter / 2 + CROSS;
    sheet.outline(circle(cx, cy, hole.diameter / 2), { line: LINE.outline }, clip);
    sheet.outline(
      straight([
        [cx - reach, cy],
        [cx + reach, cy],
      ]),
      { line: LINE.axis },
      clip,
    );
    sheet.outline(
      straight([
        [cx, cy - reach],
        [cx, cy + reach],
      ]),
      { line: LINE.axis },
      clip,
    );
  }
  for (const it of part.words) {
    if (!isIn(it)) continue;
    const [tx, ty] = at(it);
    const wide = sheet.lettering.width(it.text, { face: 'figure', size: 8 });
    sheet.text(it.text, Math.min(tx, x + tile.x1 - tile.x0 - wide), ty - 4, { style: 'label' });
  }
  seams(sheet, tile, x, y);
}
