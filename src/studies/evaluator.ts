import type { State } from '../calc/limits/judge.ts';

/** Input values put over what the plan holds, by name, in base units. */
export type Overrides = ReadonlyMap<string, number | boolean | string>;

/** How one limit stands in one sample, in the unit of what it judges. */
export interface LimitSample {
  readonly name: string;
  readonly state: State;
  readonly room: number | null;
  readonly ratio: number | null;
  readonly value: number | null;
  readonly low: number | null;
  readonly high: number | null;
}

/** What one set of inputs gives. Read it before the next evaluation: it may look into what is computed then. */
export interface Sample {
  /** A result in its base unit, yes as 1 and no as 0; null when it has no answer. */
  value(name: string): number | null;
  /** Every limit, always in the same order. */
  readonly limits: readonly LimitSample[];
  /** Why the inputs cannot be so at all; nothing then has an answer. */
  readonly refused?: string;
}

/** Answers one set of inputs at a time. */
export interface Evaluator {
  evaluate(overrides: Overrides): Sample;
}
