import type { Classed, LimitClass } from '../calc/limits/classes.ts';
import { cellNamed, limitCells } from '../plan/book.ts';
import type { OwnCell, OwnLimit, Value } from '../plan/plan.ts';
import type { Bound, LimitCell } from '../plan/template.ts';

/** What a limit judges and against what, the workbook's and the owner's alike. */
export interface LimitRule extends Classed {
  readonly name: string;
  readonly result: string;
  /** A figure, a cell, or a cell turned over; absent bounds do not bind. */
  readonly low?: Bound;
  readonly high?: Bound;
  readonly near: number;
  /** The yes/no cell that says whether it applies, or does not; absent when it always does. */
  readonly applies?: string | { readonly not: string };
  readonly graded: boolean;
  readonly mustExist: boolean;
  readonly lowIsOutside: boolean;
  /** An owner's own limit, not the workbook's. */
  readonly own?: true;
}

const ofCell = (cell: LimitCell): LimitRule => ({
  name: cell.name,
  result: cell.result,
  ...(cell.low === undefined ? {} : { low: cell.low }),
  ...(cell.high === undefined ? {} : { high: cell.high }),
  near: cell.near,
  ...(cell.applies === undefined ? {} : { applies: cell.applies }),
  graded: cell.graded !== false,
  mustExist: cell.must_exist === true,
  lowIsOutside: cell.low_is_outside === true,
  class: cell.class,
  ...(cell.unbuildable_below === undefined ? {} : { unbuildableBelow: cell.unbuildable_below }),
});

const PLACED: ReadonlySet<string> = new Set(['mm', 'deg']);

/** An owner's own limit on a length or an angle is about where things are; on anything else, about what they bear. */
function classOfOwn(result: string, cells: readonly OwnCell[]): LimitClass {
  const unit = cellNamed(result)?.unit ?? cells.find((it) => it.name === result)?.unit;
  return unit !== undefined && PLACED.has(unit) ? 'too close' : 'too weak';
}

const ofOwn = ({ name, result, low, high, near }: OwnLimit, cells: readonly OwnCell[]): LimitRule => ({
  name,
  result,
  ...(low === undefined ? {} : { low }),
  ...(high === undefined ? {} : { high }),
  near,
  graded: true,
  mustExist: false,
  lowIsOutside: false,
  class: classOfOwn(result, cells),
  own: true,
});

const known: readonly LimitRule[] = limitCells.map(ofCell);

/** Every limit in the workbook's order, then the owner's own, which may judge own cells. */
export const limitRules = (
  own: readonly OwnLimit[] = [],
  cells: readonly OwnCell[] = [],
): readonly LimitRule[] => (own.length === 0 ? known : [...known, ...own.map((it) => ofOwn(it, cells))]);

const namesIn = (bound: Bound | undefined): string[] =>
  typeof bound === 'string' ? [bound] : typeof bound === 'object' ? [bound.minus] : [];

/** The cells that a limit looks at, in the order in which a missing one is told. */
export const cellsOf = ({ applies, result, low, high }: LimitRule): readonly string[] => [
  ...(applies === undefined ? [] : [typeof applies === 'string' ? applies : applies.not]),
  result,
  ...namesIn(low),
  ...namesIn(high),
];

/** What is judged of a cell: a yes/no counts as 1 or 0, a word is no number. */
export const judgedNumber = (value: Value): number | undefined => {
  if (typeof value === 'number') return value;
  return typeof value === 'boolean' ? Number(value) : undefined;
};
