import { type Plan, readingOf } from './plan.ts';

/** Inputs that hold a stand-in, in the plan's active scenario or in the one named. */
export const standIns = (plan: Plan, scenario: string | null = plan.active): readonly string[] =>
  [...plan.inputs.keys()].filter((name) => readingOf(plan, name, scenario)?.origin === 'stand-in');
