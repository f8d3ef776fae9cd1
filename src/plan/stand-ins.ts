import { inputNamed } from './book.ts';
import { type Plan, readingOf } from './plan.ts';

type Rows = { readonly name: string; readonly rows: readonly unknown[] };

/** Whether anything can rest on an input: some matter only once a survey table has rows. */
export function matters(plan: { readonly tables: readonly Rows[] }, name: string): boolean {
  const tables = inputNamed(name)?.with_table;
  return (
    tables === undefined || plan.tables.some((table) => table.rows.length > 0 && tables.includes(table.name))
  );
}

/** Whether an input holds a stand-in that the plan rests on. */
export const isStandIn = (plan: Plan, name: string, scenario: string | null = plan.active): boolean =>
  readingOf(plan, name, scenario)?.origin === 'stand-in' && matters(plan, name);

/** Inputs that hold a stand-in, in the plan's active scenario or in the one named. */
export const standIns = (plan: Plan, scenario: string | null = plan.active): readonly string[] =>
  [...plan.inputs.keys()].filter((name) => isStandIn(plan, name, scenario));
