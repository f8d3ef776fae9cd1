import { benchFor } from '../../drawings/reading/bench.ts';
import { readingPicture } from '../../drawings/reading/reading-picture.ts';
import { withTypical } from '../../drawings/reading/typical.ts';
import type { Values } from '../../drawings/values.ts';
import { Flow } from '../page/flow.ts';
import type { Printout } from '../page/printout.ts';
import { printoutFor, type SheetInput } from '../sheet-input.ts';
import { type Entry, type EntryLook, entry, entryHeight, LARGE, SMALL } from './entry.ts';
import { frontPage } from './front-page.ts';
import { numbersOf, type ReadingGroup, readingsOf } from './readings.ts';
import { surveyTables } from './survey-tables.ts';

/** Nothing is known yet: pictures are drawn on a boat of no particular size. */
const EMPTY: Values = { number: () => null, flag: () => null };

function groups(
  flow: Flow,
  all: readonly ReadingGroup[],
  numbers: ReadonlyMap<string, number>,
  look: EntryLook,
  { units }: SheetInput,
): void {
  for (const { title, lead, cells } of all) {
    flow.section(title, 50);
    flow.text(lead, 'small');
    for (const cell of cells) {
      const it: Entry = {
        number: numbers.get(cell.name) ?? 0,
        cell,
        picture: readingPicture(cell.name, EMPTY, { unit: units }),
      };
      flow.place(entryHeight(flow.sheet, it, flow.sheet.area.width, look), (sheet, x, y, width) =>
        entry(sheet, it, x, y, width, look, units),
      );
    }
  }
}

/** The blank form to take to the boat: every reading of Boat and of the gear, and the survey's tables. */
export function surveyForm(input: SheetInput): Printout {
  const printout = printoutFor(input, 'survey form');
  const [boat, gear] = [readingsOf('Boat'), readingsOf('Gear')];
  const numbers = numbersOf([...boat, ...gear]);
  const flow = new Flow(printout);
  const bench = benchFor(withTypical(EMPTY));
  frontPage(flow, numbers);
  flow.next();
  flow.title('The boat');
  groups(flow, boat, numbers, LARGE, input);
  if (bench !== null) surveyTables(flow, bench, input.units);
  flow.next();
  flow.title('The gear');
  flow.text(
    'Take each value from the gear’s own manual, or measure it on the gear. Where both differ, the manual is right.',
  );
  groups(flow, gear, numbers, SMALL, input);
  return printout.finish();
}
