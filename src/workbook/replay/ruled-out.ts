import type { LimitRule } from '../limit-rule.ts';
import type { Program } from './program.ts';

/** The cell that says whether a limit applies, if one does. */
export const flagOf = ({ applies }: LimitRule): string | undefined =>
  typeof applies === 'object' ? applies.not : applies;

/** Whether what stays as it is has a limit apply nowhere; `program` must have been planned for its flag. */
export function isRuledOut(rule: LimitRule, { wanted, given }: Program): boolean {
  const flag = flagOf(rule);
  const slot = wanted.find(([name]) => name === flag)?.[1];
  const fixed = given.find(([place]) => place === slot)?.[1];
  return fixed === (typeof rule.applies === 'object');
}
