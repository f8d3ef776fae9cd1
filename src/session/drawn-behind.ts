import { type Plan, readingOf, type Value } from '../plan/plan.ts';

export type ValueOf = (name: string) => Value;

/** What another scenario draws behind the one shown: its numbers as worked out; yes, no and words as entered. */
export const drawnBehind =
  (plan: Plan, scenario: string | null, numbers: ReadonlyMap<string, number | null>): ValueOf =>
  (name) => {
    const entered = readingOf(plan, name, scenario)?.value;
    return typeof entered === 'boolean' || typeof entered === 'string'
      ? entered
      : (numbers.get(name) ?? null);
  };
