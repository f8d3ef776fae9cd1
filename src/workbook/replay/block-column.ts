import { spanOf } from '../../calc/limits/judge.ts';
import type { Bound } from '../../plan/template.ts';

/** A cell as the engine hands it out: NaN in `numbers` where `missing` says that there is none. */
export interface Looked {
  readonly numbers: Float64Array;
  /** The same at every point of every block. */
  readonly isFixed: boolean;
  missing(i: number): boolean;
}

/** Numbers at every point of a block, brought up to date for each. */
export interface BlockColumn {
  readonly numbers: Float64Array;
  /** The same at every point of every block. */
  readonly isFixed: boolean;
  readonly update: (count: number) => void;
}

function column(size: number, isFixed: boolean, update: (numbers: Float64Array, count: number) => void) {
  const numbers = new Float64Array(size);
  if (isFixed) update(numbers, size);
  return { numbers, isFixed, update: isFixed ? () => undefined : (count: number) => update(numbers, count) };
}

/** A bound: infinite, `open`, where there is none, NaN where it cannot be computed. */
export function boundColumn(
  bound: Bound | undefined,
  open: number,
  size: number,
  look: (name: string) => Looked,
): BlockColumn {
  if (bound === undefined || typeof bound === 'number') {
    return column(size, true, (numbers) => numbers.fill(bound ?? open));
  }
  if (typeof bound === 'string') return { ...look(bound), update: () => undefined };
  const turned = look(bound.minus);
  return column(size, turned.isFixed, (numbers, count) => {
    for (let i = 0; i < count; i++) numbers[i] = 0 - (turned.numbers[i] as number);
  });
}

/** What room is measured against. */
export const spanColumn = (low: BlockColumn, high: BlockColumn, size: number): BlockColumn =>
  column(size, low.isFixed && high.isFixed, (numbers, count) => {
    for (let i = 0; i < count; i++) numbers[i] = spanOf(low.numbers[i] as number, high.numbers[i] as number);
  });
