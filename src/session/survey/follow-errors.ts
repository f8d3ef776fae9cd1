import type { Plan, Value } from '../../plan/plan.ts';
import { TAKE_OVERS } from './take-overs.ts';

/** Results that are the standard error of a reading. */
const ERRORS = TAKE_OVERS.flatMap(({ error }) => (error === undefined ? [] : [error]));

/** The standard errors as they are. */
export const errorsNow = (
  value: (name: string) => Value | undefined,
): ReadonlyMap<string, Value | undefined> => new Map(ERRORS.map((name) => [name, value(name)]));

/** Two figures that say the same: the last digits may differ between two ways of working them out. */
const same = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(a), Math.abs(b));

/**
 * A plan in which readings that follow the survey carry its standard error as it is now. One whose ± is no longer the
 * error as it was before is somebody's own, and stays.
 */
export function withErrors(
  plan: Plan,
  before: ReadonlyMap<string, Value | undefined>,
  now: ReadonlyMap<string, Value | undefined>,
): Plan {
  let inputs = plan.inputs;
  for (const { name, from, error } of TAKE_OVERS) {
    const reading = plan.inputs.get(name);
    if (error === undefined || reading?.formula !== `=${from}` || reading.offBy === undefined) continue;
    const [was, is] = [before.get(error), now.get(error)];
    if (typeof was !== 'number' || typeof is !== 'number' || !(is > 0) || is === was) continue;
    if (same(reading.offBy, was)) inputs = new Map(inputs).set(name, { ...reading, offBy: is });
  }
  return inputs === plan.inputs ? plan : { ...plan, inputs };
}
