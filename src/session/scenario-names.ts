import { CAPS } from '../plan/caps.ts';
import { type Plan, scenarioNamed } from '../plan/plan.ts';

/** A name with something after it, cut at a whole character where both would be too long. */
function ending(name: string, end: string): string {
  const signs = [...name];
  while (signs.join('').length + end.length > CAPS.name) signs.pop();
  return signs.join('') + end;
}

function firstFree(plan: Plan, from: number, name: (n: number) => string): string {
  for (let n = from; ; n++) if (scenarioNamed(plan, name(n)) === undefined) return name(n);
}

/** A name for a copy of a scenario that no scenario has yet. */
export const copyName = (plan: Plan, name: string): string =>
  firstFree(plan, 1, (n) => ending(name, n === 1 ? ', copy' : `, copy ${n}`));

/** A name for what is kept next. */
export const nextScenarioName = (plan: Plan): string =>
  firstFree(plan, plan.scenarios.length + 1, (n) => `Scenario ${n}`);
