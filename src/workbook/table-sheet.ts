import type { Plan, SurveyTable } from '../plan/plan.ts';
import { figureNamed } from '../plan/table-figures.ts';
import { MOST_ROWS, tables, weighedRows } from '../plan/tables.ts';
import type { TableTemplate } from '../plan/template.ts';

/** The sheet on which the survey's tables stand side by side, each with room for the most rows it may have. */
export const TABLE_SHEET = 'tables';

export type Rows = readonly (readonly (number | null)[])[];

/** Rows of every survey table, by name; the last figure of a row is what it may be off. */
export type TableContents = ReadonlyMap<string, Rows>;

const weighed = new WeakMap<SurveyTable, Rows>();

/** A table's rows are the same object until the table changes. */
function rowsOf(table: SurveyTable): Rows {
  const known = weighed.get(table) ?? weighedRows(table);
  weighed.set(table, known);
  return known;
}

export const tableContents = (plan: Plan): TableContents =>
  new Map(plan.tables.map((table) => [table.name, rowsOf(table)]));

/** The tables with other numbers for some of their figures, by the figures' names. */
export function withFigures(
  tables: TableContents,
  figures: Iterable<readonly [string, unknown]>,
): TableContents {
  const moved = new Map<string, (number | null)[][]>();
  for (const [name, value] of figures) {
    const { table = '', row: at = -1, column = 0 } = figureNamed(name) ?? {};
    const rows = moved.get(table) ?? (tables.get(table) ?? []).map((row) => [...row]);
    const row = rows[at];
    if (row === undefined) throw new RangeError(`There is no figure ${name} in this plan.`);
    if (typeof value !== 'number') throw new RangeError(`${name} takes a number, not ${String(value)}.`);
    row[column] = value;
    moved.set(table, rows);
  }
  return moved.size === 0 ? tables : new Map([...tables, ...moved]);
}

/** Figures of a row: its columns, and what it may be off. */
const widthOf = ({ columns }: TableTemplate): number => columns.length + 1;

/** Column letters of the engine, from 0. */
const letters = (column: number): string =>
  column < 26
    ? String.fromCharCode(65 + column)
    : letters(Math.floor(column / 26) - 1) + letters(column % 26);

interface TablePlace {
  readonly name: string;
  readonly column: number;
  readonly width: number;
}

/** Where each table stands. */
export const tablePlaces: readonly TablePlace[] = tables.map((table, i) => ({
  name: table.name,
  column: tables.slice(0, i).reduce((sum, it) => sum + widthOf(it), 0),
  width: widthOf(table),
}));

/** What a table's name stands for. */
export const tableRange = ({ column, width }: TablePlace): string =>
  `=${TABLE_SHEET}!$${letters(column)}$1:$${letters(column + width - 1)}$${MOST_ROWS}`;

/** A table's rows over all the room it has: what a row lacks is empty. */
export const tableBlock = ({ width }: TablePlace, rows: Rows): (number | null)[][] =>
  Array.from({ length: MOST_ROWS }, (_, i) => Array.from({ length: width }, (_, k) => rows[i]?.[k] ?? null));

/** A row that a formula sees, and its place in the table. */
export interface CompleteRow {
  readonly at: number;
  readonly figures: readonly number[];
}

const isComplete = (row: Rows[number]): row is readonly number[] => row.every((cell) => cell !== null);

/** The rows a formula sees: those with every figure. */
export const completeRows = (rows: Rows): readonly CompleteRow[] =>
  rows.flatMap((figures, at) => (isComplete(figures) ? [{ at, figures }] : []));
