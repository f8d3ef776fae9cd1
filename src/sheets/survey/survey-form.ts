import { benchFor } from '../../drawings/reading/bench.ts';
import { readingPicture } from '../../drawings/reading/reading-picture.ts';
import { withTypical } from '../../drawings/reading/typical.ts';
import type { Values } from '../../drawings/values.ts';
import { Flow } from '../page/flow.ts';
import type { Printout } from '../page/printout.ts';
import { printoutFor, type SheetInput } from '../sheet-input.ts';
import { BARE, type Entry, type EntryLook, entry, entryHeight, LARGE, SMALL } from './entry.ts';
import { frontPage } from './front-page.ts';
import { numbersOf, type ReadingGroup, readingsOf } from './readings.ts';
import { clearPages, linesPages } from './survey-tables.ts';

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
    flow.section(title, look.picture > 0 ? 50 : 30);
    if (lead !== '') flow.text(lead, 'small');
    for (const cell of cells) {
      const it: Entry = {
        number: numbers.get(cell.name) ?? 0,
        cell,
        picture: readingPicture(cell.name, EMPTY, { unit: units }),
      };
      // What is assumed is rarely written down, and needs no picture.
      const its = cell.where === 'assumed' ? BARE : look;
      flow.place(entryHeight(flow.sheet, it, flow.sheet.area.width, its), (sheet, x, y, width) =>
        entry(sheet, it, x, y, width, its, units),
      );
    }
  }
}

/** The blank form to take to the boat: every reading of Boat and of the gear, and the survey's tables. */
export function surveyForm(input: SheetInput): Printout {
  const printout = printoutFor(input, 'survey form');
  const [boat, gear, survey] = [readingsOf('Boat'), readingsOf('Gear'), readingsOf('Survey')];
  const lie = survey.filter(({ cells }) => cells.some((it) => it.name === 'list_reading'));
  const lines = survey.filter(({ cells }) => cells.some((it) => it.name === 'tape_zero_height'));
  const above = survey.filter(({ cells }) => cells.some((it) => it.name === 'drive_height'));
  const numbers = numbersOf([...boat, ...lines, ...lie, ...above, ...gear]);
  const flow = new Flow(printout);
  const bench = benchFor(withTypical(EMPTY));
  const set = (some: readonly ReadingGroup[], look: EntryLook): void =>
    groups(flow, some, numbers, look, input);
  frontPage(flow, numbers);
  flow.next();
  flow.title('The boat');
  set(boat, LARGE);
  if (bench !== null) {
    linesPages(
      flow,
      bench,
      input.units,
      () =>
        set(
          lines.map((it) => ({ ...it, lead: '' })),
          BARE,
        ),
      () => set(lie, BARE),
    );
    clearPages(flow, bench, input.units);
    set(above, BARE);
  }
  flow.next();
  flow.title('The gear');
  flow.text(
    'Take each value from the gear’s own manual, or measure it on the gear. Where both differ, the manual is right.',
  );
  set(gear, SMALL);
  return printout.finish();
}
