import type { State } from './judge.ts';

/** Limit states by the number that stands for each in a column. */
export const STATES = [
  'inside',
  'near',
  'outside',
  'no answer',
  'does not apply',
] as const satisfies readonly State[];
