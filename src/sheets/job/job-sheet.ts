import type { Ask } from '../../order/ask.ts';
import { holesOf } from '../../order/holes.ts';
import { keepOutsOf } from '../../order/keep-outs-of.ts';
import { profileOf } from '../../order/profile-of.ts';
import type { Printout } from '../page/printout.ts';
import { WHO, who } from '../page/who.ts';
import { printoutFor, type SheetInput, valuesOf } from '../sheet-input.ts';
import { fittingPage } from './fitting-page.ts';
import { HEADING, heading } from './heading.ts';
import { holeTable, holeTableHeight } from './hole-table.ts';
import { lettered } from './keep-out-key.ts';
import { markingDrawings } from './marking-drawings.ts';
import { sideMarking } from './side-marking.ts';
import { standInBlanks } from './stand-in-blanks.ts';
import { sternMarking } from './stern-marking.ts';

const TITLE = 9;

/** First page: who, what to read before drilling, and where the holes are. */
function markingPage(printout: Printout, input: SheetInput): void {
  const sheet = printout.sheet();
  const { x, width } = sheet.area;
  const { units } = input;
  const ask: Ask = (name) => input.answer(name).value;
  const profile = profileOf(ask, input.plan);
  const holes = holesOf(ask, profile);
  const keepOuts = lettered(keepOutsOf(input.plan));
  sheet.text('Job sheet: mark and drill', x, sheet.area.y, { style: 'page' });
  who(sheet, x, sheet.area.y + TITLE, width);
  let y = sheet.area.y + TITLE + WHO + 1;
  y = heading(sheet, 'Stand-ins: read these before you drill', x, y, width);
  y = standInBlanks(sheet, input, x, y, width);
  y = heading(sheet, 'Where to mark', x, y, width);
  const below = HEADING + holeTableHeight(sheet, holes, units, width);
  const area = { x, y, width, height: sheet.bottom - below - y - 1 };
  const values = valuesOf(input);
  markingDrawings(
    sheet,
    sideMarking(
      values,
      units,
      profile.map(([z = 0, x = 0]) => [z, x] as const),
    ),
    sternMarking(values, ask, holes.holes, keepOuts),
    holes.holes,
    keepOuts,
    units,
    area,
  );
  y = heading(sheet, 'Holes', x, sheet.bottom - below, width);
  holeTable(sheet, holes, units, x, y, width);
}

/** The sheet for the day of the work, two pages. */
export function jobSheet(input: SheetInput): Printout {
  const printout = printoutFor(input, 'job sheet');
  markingPage(printout, input);
  fittingPage(printout, input);
  return printout.finish();
}
