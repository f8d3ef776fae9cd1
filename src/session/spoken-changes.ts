import { inputNamed } from '../plan/book.ts';
import { tableRows } from '../plan/edit/tables.ts';
import { type Plan, readingOf } from '../plan/plan.ts';
import { tables } from '../plan/tables.ts';
import { fittedRows } from './survey/fitted-rows.ts';
import { TAKE_OVERS } from './survey/take-overs.ts';

const labelOf = (name: string): string => inputNamed(name)?.label ?? name;

const locks = (before: Plan, after: Plan): readonly string[] => {
  if (before.locked === after.locked) return [];
  const on = [...after.locked].filter((it) => !before.locked.has(it));
  const off = [...before.locked].filter((it) => !after.locked.has(it));
  return [
    ...on.map((name) => `${labelOf(name)} is locked.`),
    ...off.map((name) => `${labelOf(name)} is unlocked.`),
  ];
};

const follows = (plan: Plan, name: string, from: string): boolean =>
  readingOf(plan, name)?.formula === `=${from}`;

const takeOvers = (before: Plan, after: Plan): readonly string[] =>
  TAKE_OVERS.flatMap(({ name, from }) => {
    const [was, is] = [follows(before, name, from), follows(after, name, from)];
    if (was === is) return [];
    return [`${labelOf(name)} ${is ? 'now follows' : 'no longer follows'} the survey.`];
  });

const flagged = (plan: Plan, table: (typeof tables)[number]): ReadonlySet<number> =>
  new Set(
    fittedRows(tableRows(plan, table.name), table)?.rows.flatMap((it) => (it.suspicious ? [it.at] : [])),
  );

const flags = (before: Plan, after: Plan): readonly string[] => {
  if (before.tables === after.tables) return [];
  return tables.flatMap((table) => {
    if (table.columns.length !== 2) return [];
    const was = flagged(before, table);
    return [...flagged(after, table)]
      .filter((at) => !was.has(at))
      .map((at) => `Row ${at + 1} of ${table.label} does not fit the others: measure it again.`);
  });
};

/** What an edit, or undo, did that shows on the page without being said by what was pressed. */
export const spokenChanges = (before: Plan, after: Plan): readonly string[] => [
  ...locks(before, after),
  ...takeOvers(before, after),
  ...flags(before, after),
];
