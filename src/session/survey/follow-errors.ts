import type { Plan, Reading, Value } from '../../plan/plan.ts';
import { TAKE_OVERS } from './take-overs.ts';

/** Results that are the standard error of a reading. */
const ERRORS = TAKE_OVERS.flatMap(({ error }) => (error === undefined ? [] : [error]));

/** The standard errors as they are. */
export const errorsNow = (
  value: (name: string) => Value | undefined,
): ReadonlyMap<string, Value | undefined> => new Map(ERRORS.map((name) => [name, value(name)]));

/** Two figures that say the same: the last digits may differ between two ways of working them out. */
const same = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(a), Math.abs(b));

type Errors = ReadonlyMap<string, Value | undefined>;

/** The readings with each error that is still the one before put to what it is now; the same map when there is none. */
function following(
  readings: ReadonlyMap<string, Reading>,
  before: Errors,
  now: Errors,
): ReadonlyMap<string, Reading> {
  let all = readings;
  for (const { name, from, error } of TAKE_OVERS) {
    const reading = readings.get(name);
    if (error === undefined || reading?.formula !== `=${from}` || reading.offBy === undefined) continue;
    const [was, is] = [before.get(error), now.get(error)];
    if (typeof was !== 'number' || typeof is !== 'number' || !(is > 0) || is === was) continue;
    if (same(reading.offBy, was)) all = new Map(all).set(name, { ...reading, offBy: is });
  }
  return all;
}

/**
 * A plan in which readings that follow the survey carry its standard error as it is now, the plan's own and those a
 * scenario has of its own. One whose ± is no longer the error as it was before is somebody's own, and stays.
 */
export function withErrors(plan: Plan, before: Errors, now: Errors): Plan {
  const inputs = following(plan.inputs, before, now);
  const scenarios = plan.scenarios.map((it) => {
    const overrides = following(it.overrides, before, now);
    return overrides === it.overrides ? it : { ...it, overrides };
  });
  const isSame = inputs === plan.inputs && scenarios.every((it, i) => it === plan.scenarios[i]);
  return isSame ? plan : { ...plan, inputs, scenarios };
}
