import { type Plan, readingOf, type Value } from './plan.ts';
import { type Clash, clash } from './relations.ts';

export interface PlanClash extends Clash {
  /** The scenario in which it shows; null: the base values. */
  readonly scenario: string | null;
}

/** A formula's value is only the last one worked out, so it breaks nothing by itself. */
const settled = (plan: Plan, name: string, scenario: string | null): Value => {
  const reading = readingOf(plan, name, scenario);
  return reading === undefined || reading.formula !== undefined ? null : reading.value;
};

/** The first values of a plan that cannot be so together, in the base or in any scenario; undefined when all can. */
export function planClash(plan: Plan): PlanClash | undefined {
  for (const scenario of [null, ...plan.scenarios.map((it) => it.name)]) {
    const found = clash((name) => settled(plan, name, scenario));
    if (found === undefined) continue;
    const why = scenario === null ? found.why : `In the scenario “${scenario}”, ${found.why}`;
    return { ...found, why, scenario };
  }
  return undefined;
}
