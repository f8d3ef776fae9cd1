import { CAPS } from '../caps.ts';
import type { Plan, RowNote, SurveyTable } from '../plan.ts';
import { rowsRefusal, surveyTable, tableNamed, tables } from '../tables.ts';
import { lineRefusal, linesRefusal } from '../text-refusal.ts';
import { type Edited, edited, refuse } from './edited.ts';

/** One row of a survey table: its figures, and what stands beside them. */
export interface TableRow {
  readonly values: readonly (number | null)[];
  readonly note: RowNote | null;
}

/** A plan's rows of a table with their notes. */
export function tableRows(plan: Plan, name: string): readonly TableRow[] {
  const { rows, notes } = surveyTable(plan, name);
  return rows.map((values, i) => ({ values, note: notes?.[i] ?? null }));
}

function noteRefusal(note: RowNote, at: number): string | undefined {
  const row = `row ${at + 1}`;
  const { label, offBy, who, when, with: tool, note: text } = note;
  if (offBy !== undefined && !(offBy >= 0 && offBy < Number.POSITIVE_INFINITY)) {
    return `What ${row} may be off by must be a number of at least 0, not ${offBy}.`;
  }
  return (
    lineRefusal(`The label of ${row}`, label, CAPS.name) ??
    lineRefusal(`Who read ${row}`, who) ??
    lineRefusal(`When ${row} was read`, when) ??
    lineRefusal(`What ${row} was read with`, tool) ??
    linesRefusal(`The note on ${row}`, text)
  );
}

/** Tables in the order of the work, then what else the plan holds; none without rows. */
function withTable(plan: Plan, table: SurveyTable): readonly SurveyTable[] {
  const others = plan.tables.filter((it) => it.name !== table.name);
  const all = table.rows.length === 0 ? others : [...others, table];
  const known = tables.flatMap(({ name }) => all.filter((it) => it.name === name));
  return [...known, ...all.filter((it) => tableNamed(it.name) === undefined)];
}

/** Puts rows in place of all that one of the survey's tables holds. */
export function setTableRows(plan: Plan, name: string, rows: readonly TableRow[]): Edited {
  const template = tableNamed(name);
  if (template === undefined) return refuse(`There is no survey table named ${name}.`);
  const width = template.columns.length;
  const values = rows.map((row) => template.columns.map((_, k) => row.values[k] ?? null));
  const wide = rows.find((row) => row.values.length > width);
  if (wide !== undefined) {
    return refuse(`A row of “${template.label}” has ${width} figures; ${wide.values.length} were given.`);
  }
  const odd = values.flat().find((value) => value !== null && !Number.isFinite(value));
  if (odd !== undefined) return refuse(`A row of “${template.label}” holds numbers or nothing, not ${odd}.`);
  const why =
    rowsRefusal(template, values) ??
    rows.map((row, i) => (row.note === null ? undefined : noteRefusal(row.note, i))).find(Boolean);
  if (why !== undefined) return refuse(why);
  const hasNotes = rows.some((row) => row.note !== null);
  return edited({
    ...plan,
    tables: withTable(plan, {
      name,
      columns: template.columns.map((column) => column.name),
      rows: values,
      ...(hasNotes ? { notes: rows.map((row) => row.note) } : {}),
    }),
  });
}

/** Adds rows at the end of a table. */
export const addTableRows = (plan: Plan, name: string, rows: readonly TableRow[]): Edited =>
  setTableRows(plan, name, [...tableRows(plan, name), ...rows]);

/** Changes one row; a row that is not there is refused. */
export function setTableRow(plan: Plan, name: string, at: number, row: TableRow): Edited {
  const rows = tableRows(plan, name);
  if (rows[at] === undefined) return refuse(`The table ${name} has no row ${at + 1}.`);
  return setTableRows(
    plan,
    name,
    rows.map((it, i) => (i === at ? row : it)),
  );
}

/** Takes one row away. */
export function removeTableRow(plan: Plan, name: string, at: number): Edited {
  const rows = tableRows(plan, name);
  if (rows[at] === undefined) return refuse(`The table ${name} has no row ${at + 1}.`);
  return setTableRows(
    plan,
    name,
    rows.filter((_, i) => i !== at),
  );
}
