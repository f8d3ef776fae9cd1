import type { Plan, SurveyTable } from '../plan/plan.ts';
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

/** The rows a formula sees: those with every figure. */
export const completeRows = (rows: Rows): readonly (readonly number[])[] =>
  rows.filter((row): row is readonly number[] => row.every((cell) => cell !== null));
