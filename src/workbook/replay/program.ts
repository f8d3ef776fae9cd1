import type { Scalar } from './scalar.ts';
import type { Step } from './steps.ts';

export type InputKind = 'number' | 'boolean' | 'text';

/** An input that changes from point to point. */
export interface Input {
  readonly name: string;
  readonly slot: number;
  readonly kind: InputKind;
  /** What it holds now; null when that is nothing, or follows from a formula. */
  readonly present: Scalar;
  /** Nothing wanted follows from it. */
  readonly idle: boolean;
}

/** Where a step's answer is looked at at all: only where a condition is as told. */
export interface Guard {
  readonly slot: number;
  readonly when: boolean;
}

export interface GuardedStep extends Step {
  readonly guard?: Guard;
}

/** What is left to do at each point once all that the varied inputs do not reach has been worked out. Plain data. */
export interface Program {
  readonly slots: number;
  readonly inputs: readonly Input[];
  readonly given: readonly (readonly [slot: number, value: Scalar])[];
  readonly steps: readonly GuardedStep[];
  /** The slot of each wanted name, in the order asked. */
  readonly wanted: readonly (readonly [name: string, slot: number])[];
}
