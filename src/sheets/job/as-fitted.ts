import { cellNamed } from '../../plan/book.ts';
import type { CellName } from '../../plan/names.ts';
import type { Units } from '../../plan/plan.ts';
import { formatValue } from '../../units/format-value.ts';
import type { Answer } from '../../workbook/engine.ts';
import { BLANK, type Sheet } from '../page/sheet.ts';

const COLUMNS = 4;
const GAP = 5;
const WRITE = 22;
const SIGNATURE = 11;

const COMMON = [
  'lower_bracket_height',
  'upper_bracket_height',
  'shaft_offset',
  'shaft_lean',
  'shaft_foot_height',
  'shim_count',
] as const;

const FEET: Readonly<Record<number, readonly CellName[]>> = {
  1: ['single_foot_y', 'single_foot_height'],
  2: ['port_foot_y', 'port_foot_height', 'starboard_foot_y', 'starboard_foot_height'],
};

const namesOf = (answer: (name: CellName) => Answer): readonly CellName[] => [
  ...COMMON,
  ...(FEET[Number(answer('strut_count').value)] ?? []),
];

export const asFittedHeight = (answer: (name: CellName) => Answer): number =>
  Math.ceil(namesOf(answer).length / COLUMNS) * BLANK + SIGNATURE + 1;

/** Planned values with a blank beside each for what was fitted, and a line to sign on. */
export function asFitted(
  sheet: Sheet,
  answer: (name: CellName) => Answer,
  units: Units,
  x: number,
  y: number,
  width: number,
): void {
  const its = (width - GAP * (COLUMNS - 1)) / COLUMNS;
  const names = namesOf(answer);
  for (const [i, name] of names.entries()) {
    const cell = cellNamed(name);
    if (cell === undefined) continue;
    const left = x + (i % COLUMNS) * (its + GAP);
    const at = y + Math.floor(i / COLUMNS) * BLANK;
    const planned = formatValue(answer(name).value, cell.unit, { unit: units === 'in' ? 'in' : 'mm' });
    sheet.text(cell.short, left, at + 0.6, { style: 'small' });
    sheet.text(planned, left, at + 4, { style: 'label' });
    sheet.blank(left + its - WRITE, at, WRITE);
  }
  const line = y + Math.ceil(names.length / COLUMNS) * BLANK + SIGNATURE;
  for (const [word, from, to] of [
    ['Fitted by', 0, 0.36],
    ['Date', 0.38, 0.58],
    ['Signature', 0.6, 1],
  ] as const) {
    const left = x + width * from;
    sheet.text(word, left, line - 4, { style: 'small' });
    sheet.line(
      left + sheet.lettering.width(word, { face: 'narrow', size: 8 }) + 2,
      line,
      x + width * to,
      line,
    );
  }
}
