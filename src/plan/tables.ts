import file from '../../templates/tables.json';
import type { Known } from './known.ts';
import type { TableName } from './names.ts';
import type { Plan, SurveyTable } from './plan.ts';
import type { TableColumn, TableTemplate } from './template.ts';

/** The survey's tables, in the order of the work. Their file is validated by the tests. */
export const tables = file.tables as readonly TableTemplate[];

const byName = new Map(tables.map((table) => [table.name, table]));

export const tableNamed = <N extends string>(name: N & Known<N, TableName>): TableTemplate | undefined =>
  byName.get(name);

/** Most rows a survey table may have. */
export const MOST_ROWS = 60;

/** A plan's rows of one of the survey's tables; a table without rows is not kept. */
export const surveyTable = (plan: Plan, name: string): SurveyTable =>
  plan.tables.find((table) => table.name === name) ?? {
    name,
    columns: (tableNamed(name)?.columns ?? []).map((column) => column.name),
    rows: [],
  };

/** A normal reading's standard deviation as the half-width of a rectangle with the same one (JCGM 100, 4.3.7). */
const ROOT_3 = Math.sqrt(3);

/**
 * A table's rows with one figure more: how far each may be off, its own or the table's usual. A row's own of 0 says
 * nothing, and counts as usual.
 */
export function weighedRows({ name, rows, notes }: SurveyTable): readonly (readonly (number | null)[])[] {
  const usual = tableNamed(name)?.off_by ?? 0;
  return rows.map((row, i) => {
    const note = notes?.[i];
    const own = note?.offBy ?? 0;
    return [...row, own > 0 ? own * (note?.normal === true ? ROOT_3 : 1) : usual];
  });
}

const within = ({ min, max }: TableColumn, value: number): boolean => value >= min && value <= max;

/** Why rows cannot stand in one of the survey's tables, as one sentence; undefined when they can. */
export function rowsRefusal(
  table: TableTemplate,
  rows: readonly (readonly (number | null)[])[],
): string | undefined {
  if (rows.length > MOST_ROWS) {
    return `The table “${table.label}” takes ${MOST_ROWS} rows at most; this would make it ${rows.length}.`;
  }
  for (const [i, row] of rows.entries()) {
    for (const [k, column] of table.columns.entries()) {
      const value = row[k] ?? null;
      if (value === null || within(column, value)) continue;
      const { label, unit, min, max } = column;
      return `${label} in row ${i + 1} of “${table.label}” cannot be ${value} ${unit}: it must be at least ${min} ${unit} and at most ${max} ${unit}.`;
    }
  }
  return undefined;
}
