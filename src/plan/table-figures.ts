import { tableNamed } from './tables.ts';

/** One figure of a survey table, by places that count from 0. */
export interface Figure {
  readonly table: string;
  readonly row: number;
  readonly column: number;
}

/** What studies call a figure that they vary, rows counting from 1: `transom_readings[3].distance`. */
export function figureName({ table, row, column }: Figure): string | undefined {
  const called = tableNamed(table)?.columns[column]?.name;
  return called === undefined ? undefined : `${table}[${row + 1}].${called}`;
}

const FIGURE = /^(\w+)\[(\d+)\]\.(\w+)$/;

/** The figure of that name; undefined for any other name. */
export function figureNamed(name: string): Figure | undefined {
  // Nearly every name is a cell's: it is not worth a look at its letters.
  const match = name.includes('[') ? FIGURE.exec(name) : null;
  if (match === null) return undefined;
  const [, table = '', row, called] = match;
  const column = tableNamed(table)?.columns.findIndex((it) => it.name === called) ?? -1;
  return column === -1 ? undefined : { table, row: Number(row) - 1, column };
}
