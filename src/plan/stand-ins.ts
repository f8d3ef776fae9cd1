import { inputNamed } from './book.ts';
import { type Plan, readingOf } from './plan.ts';
import { sourcesOf } from './sources.ts';

type Rows = { readonly name: string; readonly rows: readonly unknown[] };

/** Whether anything can rest on an input: some matter only once a survey table has rows. */
export function matters(plan: { readonly tables: readonly Rows[] }, name: string): boolean {
  const tables = inputNamed(name)?.with_table;
  return (
    tables === undefined || plan.tables.some((table) => table.rows.length > 0 && tables.includes(table.name))
  );
}

/** Whether an input holds a stand-in of its own that the plan rests on. */
const holdsOne = (plan: Plan, name: string, scenario: string | null): boolean =>
  readingOf(plan, name, scenario)?.origin === 'stand-in' && matters(plan, name);

/** Inputs with a stand-in that a cell is worked out from, through every formula between. */
export const standInsBehind = (
  plan: Plan,
  name: string,
  scenario: string | null = plan.active,
): readonly string[] =>
  [...sourcesOf(plan, name, scenario)].filter(
    (source) => source !== name && inputNamed(source) !== undefined && holdsOne(plan, source, scenario),
  );

/** Whether an input holds a stand-in that the plan rests on, or follows what is worked out from one. */
export function isStandIn(plan: Plan, name: string, scenario: string | null = plan.active): boolean {
  if (holdsOne(plan, name, scenario)) return true;
  const isFollowing = readingOf(plan, name, scenario)?.formula !== undefined;
  return isFollowing && inputNamed(name)?.kind === 'input' && standInsBehind(plan, name, scenario).length > 0;
}

/** Inputs that hold a stand-in or follow one, in the plan's active scenario or in the one named. */
export const standIns = (plan: Plan, scenario: string | null = plan.active): readonly string[] =>
  [...plan.inputs.keys()].filter((name) => isStandIn(plan, name, scenario));
