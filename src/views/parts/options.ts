import type { InputCell } from '../../plan/template.ts';

/** A value to choose, as it is read. */
export type Option = readonly [word: string, value: boolean | string | number];

const YES_NO: readonly Option[] = [
  ['yes', true],
  ['no', false],
];

/** Most whole numbers that are listed rather than counted up and down. */
const FEW = 3;

/** Hardware is told by its size in mm, whatever unit the plan is in. */
const wordFor = (cell: InputCell, value: number): string =>
  cell.unit === 'mm' ? `M${value}` : String(value);

function numbersOf(cell: InputCell): readonly number[] {
  if (cell.only !== undefined) return cell.only;
  const { min, max } = cell;
  if (cell.type !== 'whole' || min === undefined || max === undefined || max - min >= FEW) return [];
  return Array.from({ length: max - min + 1 }, (_, i) => min + i);
}

/** The values of an input that are few enough to list; undefined when it is typed. */
export function optionsOf(cell: InputCell): readonly Option[] | undefined {
  if (cell.type === 'flag') return YES_NO;
  if (cell.type === 'word') return (cell.words ?? []).map((it) => [it, it] as const);
  const numbers = numbersOf(cell);
  return numbers.length === 0 ? undefined : numbers.map((it) => [wordFor(cell, it), it] as const);
}

/** Whether an input is chosen from a list rather than typed. */
export const isPicked = (cell: InputCell): boolean => optionsOf(cell) !== undefined;
