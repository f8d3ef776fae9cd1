import type { Scalar } from './scalar.ts';

/**
 * One operation: `op` is a sign, a function's name, or one of the words of `rules/`; `args` and `out` are slots.
 * Steps stand in an order in which every slot is written before it is read.
 */
export interface Step {
  readonly op: string;
  readonly args: readonly number[];
  readonly out: number;
}

/** Formulas as plain data: what `lower` makes and `plan` cuts down. */
export interface Steps {
  /** How many slots there are. */
  readonly slots: number;
  /** The slot of each cell that was reached, by name. */
  readonly cells: readonly (readonly [name: string, slot: number])[];
  /** Slots that hold a value from the start: constants, and cells that have no formula. */
  readonly given: readonly (readonly [slot: number, value: Scalar])[];
  readonly steps: readonly Step[];
}
