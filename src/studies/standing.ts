import type { LimitSample } from './evaluator.ts';

/** Whether a limit holds, coarser than its state: near still holds. */
export type Standing = 'holds' | 'outside' | 'no answer' | 'does not apply';

export const standingOf = ({ state }: Pick<LimitSample, 'state'>): Standing =>
  state === 'inside' || state === 'near' ? 'holds' : state;

/** A limit that is outside, or of which nothing can be said, fails what is asked of it. */
export const fails = (standing: Standing): boolean => standing === 'outside' || standing === 'no answer';
