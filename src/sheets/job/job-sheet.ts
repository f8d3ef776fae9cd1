import type { Ask } from '../../order/ask.ts';
import { type Cautions, stopWords } from '../../order/cautions.ts';
import { drillNotes } from '../../order/drill.ts';
import { holesOf } from '../../order/holes.ts';
import { keepOutsOf } from '../../order/keep-outs-of.ts';
import { profileOf } from '../../order/profile-of.ts';
import type { Printout } from '../page/printout.ts';
import { WHO, who } from '../page/who.ts';
import { cautionsOf, printoutFor, type SheetInput, valuesOf } from '../sheet-input.ts';
import { fittingPage } from './fitting-page.ts';
import { HEADING, heading } from './heading.ts';
import { holeTable, holeTableHeight } from './hole-table.ts';
import { lettered } from './keep-out-key.ts';
import { markingDrawings } from './marking-drawings.ts';
import { sideMarking } from './side-marking.ts';
import { FEW_BLANKS, MOST_BLANKS, standInBlanks, standInBlanksHeight } from './stand-in-blanks.ts';
import { sternMarking } from './stern-marking.ts';

const TITLE = 9;
/** Least height at which the drawings can be marked by, mm. */
const LEAST_DRAWINGS = 62;

/** First page: who, what to read before drilling, and where the holes are. */
function markingPage(printout: Printout, input: SheetInput, cautions: Cautions): void {
  const sheet = printout.sheet();
  const { x, width } = sheet.area;
  const { units } = input;
  const ask: Ask = (name) => input.answer(name).value;
  const profile = profileOf(ask, input.plan);
  const holes = holesOf(ask, units, profile);
  const table = { holes, units, cautions, drills: drillNotes(ask) };
  const keepOuts = lettered(keepOutsOf(input.plan));
  sheet.text('Job sheet: mark and drill', x, sheet.area.y, { style: 'page' });
  who(sheet, x, sheet.area.y + TITLE, width);
  let y = sheet.area.y + TITLE + WHO + 1;
  y = heading(sheet, 'Measure these before you drill', x, y, width);
  const below = HEADING + holeTableHeight(sheet, table, width);
  const left = (most: number): number =>
    sheet.bottom - below - HEADING - 1 - y - standInBlanksHeight(sheet, input, width, most);
  // Where little is left for the drawings to mark by, first the blanks are fewer, then the holes have a sheet of their own.
  const isCrowded = left(FEW_BLANKS) < LEAST_DRAWINGS;
  const most = isCrowded || left(MOST_BLANKS) >= LEAST_DRAWINGS ? MOST_BLANKS : FEW_BLANKS;
  y = standInBlanks(sheet, input, x, y, width, most);
  y = heading(sheet, 'Where to mark', x, y, width);
  const area = { x, y, width, height: sheet.bottom - (isCrowded ? 0 : below) - y - 1 };
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
  const on = isCrowded ? printout.sheet() : sheet;
  const top = isCrowded
    ? on.text('Job sheet: holes', x, on.area.y, { style: 'page' }) + 1
    : sheet.bottom - below;
  holeTable(on, table, x, heading(on, 'Holes', x, top, width), width);
}

/** The sheet for the day of the work, two pages. */
export function jobSheet(input: SheetInput): Printout {
  const cautions = cautionsOf(input);
  const printout = printoutFor(input, 'job sheet', stopWords(cautions, 'sheet'));
  markingPage(printout, input, cautions);
  fittingPage(printout, input);
  return printout.finish();
}
