import type { TableRow } from '../../plan/edit/tables.ts';
import type { TableTemplate } from '../../plan/template.ts';
import { parseEntry } from '../../units/parse-entry.ts';

export type RowsRead =
  | { readonly ok: true; readonly rows: readonly TableRow[] }
  | { readonly ok: false; readonly why: string };

/** One figure of a row as typed: a length, or nothing. */
export function readFigure(
  label: string,
  text: string,
  bare: 'mm' | 'in',
): { readonly ok: true; readonly value: number | null } | { readonly ok: false; readonly why: string } {
  const entry = parseEntry(text, { name: label, kind: 'length', unit: 'mm', bare });
  if (!entry.ok) return entry;
  return { ok: true, value: entry.empty ? null : Number(entry.value) };
}

/** A blank between two plain figures; one inside an inch reading such as 2 3/8 sets nothing apart. */
const BETWEEN = /\s{2,}|(?<=\d|in|mm|cm|")\s+(?=[−-]?\d)/;
const BETWEEN_MARKED = /\s{2,}|(?<=in|mm|cm|")\s+(?=[−-]?\d)/;

const APART = 'Set them apart by a semicolon, a tab or two blanks.';

const LINES = /\r\n?|\n/;

/** Columns are set apart by tabs, by semicolons, or by blanks. */
const figuresOf = (line: string): readonly string[] => {
  if (line.includes('\t')) return line.split('\t');
  if (line.includes(';')) return line.split(';');
  return line.trim().split(/[/⁄"']/.test(line) ? BETWEEN_MARKED : BETWEEN);
};

/** Every figure of pasted lines as typed, with its column; a line of another length has none. */
export const figuresIn = (
  table: TableTemplate,
  text: string,
): readonly { readonly column: number; readonly typed: string }[] =>
  text.split(LINES).flatMap((line) => {
    const figures = figuresOf(line);
    return figures.length === table.columns.length
      ? figures.map((typed, column) => ({ column, typed: typed.trim() }))
      : [];
  });

/** Rows pasted or typed as lines of figures, in the order of the table's columns. The first that cannot be refuses all. */
export function readRows(table: TableTemplate, text: string, bare: 'mm' | 'in'): RowsRead {
  const lines = text.split(LINES).filter((line) => line.trim() !== '');
  const rows: TableRow[] = [];
  for (const [i, line] of lines.entries()) {
    const figures = figuresOf(line);
    if (figures.length !== table.columns.length) {
      return {
        ok: false,
        why: `Line ${i + 1} has ${figures.length} ${figures.length === 1 ? 'figure' : 'figures'}; ${table.columns.length} are wanted: ${table.columns.map((column) => column.label.toLowerCase()).join(', ')}. ${APART}`,
      };
    }
    const values: (number | null)[] = [];
    for (const [k, column] of table.columns.entries()) {
      const read = readFigure(`${column.label} in line ${i + 1}`, figures[k] ?? '', bare);
      if (!read.ok) return read;
      values.push(read.value);
    }
    rows.push({ values, note: null });
  }
  return rows.length === 0 ? { ok: false, why: 'There is no line of figures in it.' } : { ok: true, rows };
}
