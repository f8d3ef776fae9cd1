import type { Plan, Reading } from '../../plan/plan.ts';
import { TAKE_OVERS } from './take-overs.ts';

/** Two figures that say the same: the last digits may differ between two ways of working them out. */
const same = (a: number, b: number): boolean => Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(a), Math.abs(b));

/** The readings with each ± that is still what the survey said before put to what it says now; the same map when none is. */
function following(
  readings: ReadonlyMap<string, Reading>,
  before: Plan,
  now: Plan,
): ReadonlyMap<string, Reading> {
  let all = readings;
  for (const { name, from, within } of TAKE_OVERS) {
    const reading = readings.get(name);
    if (within === undefined || reading?.formula !== `=${from}` || reading.offBy === undefined) continue;
    const [was, is] = [within(before), within(now)];
    if (was === undefined || is === undefined || !(is > 0) || is === was) continue;
    if (same(reading.offBy, was)) all = new Map(all).set(name, { ...reading, offBy: is });
  }
  return all;
}

/**
 * A plan in which readings that follow the survey are off by as much as it says now, the plan's own and those a scenario
 * has of its own. One whose ± is no longer what the survey said of the plan before is somebody's own, and stays.
 */
export function withErrors(before: Plan, plan: Plan): Plan {
  const inputs = following(plan.inputs, before, plan);
  const scenarios = plan.scenarios.map((it) => {
    const overrides = following(it.overrides, before, plan);
    return overrides === it.overrides ? it : { ...it, overrides };
  });
  const isSame = inputs === plan.inputs && scenarios.every((it, i) => it === plan.scenarios[i]);
  return isSame ? plan : { ...plan, inputs, scenarios };
}
