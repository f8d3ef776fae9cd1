import { type Plan, readingOf, type Value } from '../plan/plan.ts';
import type { Study } from '../studies/study.ts';
import type { StudyQuestion } from './study-desk.ts';

export type ValueOf = (name: string) => Value;

/** Asks for every value of another scenario, so that it can be drawn behind the one shown; null is the base. */
export const drawnBehind = (
  plan: Plan,
  scenario: string | null,
  names: readonly string[],
): StudyQuestion<ValueOf> => ({
  key: `behind ${scenario ?? ''}`,
  *make(evaluatorOf): Study<ValueOf> {
    const sample = evaluatorOf(scenario).evaluate(new Map());
    const numbers = new Map(names.map((name) => [name, sample.value(name)]));
    yield { done: 1, of: 1 };
    // A study's samples are numbers; yes, no and words are read off the plan.
    return (name) => {
      const entered = readingOf(plan, name, scenario)?.value;
      return typeof entered === 'boolean' ? entered : (numbers.get(name) ?? null);
    };
  },
});
