import { inputNamed } from '../../plan/book.ts';
import { readingOf } from '../../plan/plan.ts';
import { standIns } from '../../plan/stand-ins.ts';
import { BLANK, type Sheet } from '../page/sheet.ts';
import type { SheetInput } from '../sheet-input.ts';
import { blankUnit } from '../survey/entry.ts';

/** Most blanks that this sheet has room for, and where its holes need that room. */
export const [MOST_BLANKS, FEW_BLANKS] = [6, 2];
const COLUMNS = 2;
const GAP = 6;
const WRITE = 34;

interface Blanks {
  readonly shown: readonly string[];
  readonly more: number;
}

/** What is still to be read: the readings a first survey asks for before the others. */
function blanksOf({ plan, scenario }: SheetInput, most: number): Blanks {
  // What follows others is read where those are.
  const own = standIns(plan, scenario).filter(
    (name) => readingOf(plan, name, scenario)?.formula === undefined,
  );
  const all = own.filter((name) => inputNamed(name)?.type === 'number');
  const first = all.filter((name) => inputNamed(name)?.first === true);
  const sorted = [...first, ...all.filter((name) => !first.includes(name))];
  return { shown: sorted.slice(0, most), more: Math.max(0, own.length - most) };
}

const wordsOf = ({ shown, more }: Blanks): string =>
  shown.length === 0
    ? 'No value here is a stand-in.'
    : `These values are invented round figures. Measure them on your own gear and boat, write them here, put them into the plan and print again before you drill.${more > 0 ? ` There ${more === 1 ? 'is 1 more' : `are ${more} more`}: take the survey form.` : ''}`;

const rowsHeight = ({ shown }: Blanks): number => Math.ceil(shown.length / COLUMNS) * BLANK + 2;

export function standInBlanksHeight(sheet: Sheet, input: SheetInput, width: number, most: number): number {
  const blanks = blanksOf(input, most);
  return sheet.textHeight(wordsOf(blanks), width, 'small') + rowsHeight(blanks);
}

/** Ruled blanks for what is still a stand-in; gives back the y under them. */
export function standInBlanks(
  sheet: Sheet,
  input: SheetInput,
  x: number,
  y: number,
  width: number,
  most: number,
): number {
  const blanks = blanksOf(input, most);
  const top = sheet.text(wordsOf(blanks), x, y, { style: 'small', width });
  const its = (width - GAP * (COLUMNS - 1)) / COLUMNS;
  for (const [i, name] of blanks.shown.entries()) {
    const cell = inputNamed(name);
    if (cell === undefined) continue;
    const left = x + (i % COLUMNS) * (its + GAP);
    const at = top + Math.floor(i / COLUMNS) * BLANK;
    sheet.text(cell.short, left, at + BLANK - 4.3, { style: 'text' });
    sheet.blank(left + its - WRITE, at, WRITE, blankUnit(cell.unit, input.units));
  }
  return top + rowsHeight(blanks);
}
