import type { Scalar } from './scalar.ts';

/** What the parts of a formula come to, whatever is put in. */
export type Kind = 'number' | 'boolean' | 'text' | 'mixed' | 'fault';

/** An operation on any values: the engine's own behaviour, errors and coercion included. */
export interface Rule {
  /** How many arguments it takes; others give the engine's error for a wrong number of them. */
  readonly least: number;
  readonly most: number;
  /** What it comes to when it is no error; `of its arguments` for those that hand one on. */
  readonly kind: 'number' | 'boolean' | 'text' | 'mixed' | 'fault' | 'of its arguments';
  readonly run: (args: readonly Scalar[]) => Scalar;
}
