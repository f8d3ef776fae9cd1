import type { MarkInput } from '../../drawings/mark.ts';
import type { StyleName } from '../lettering/styles.ts';
import { LINE } from '../marks/mark.ts';
import { LIMIT_MARK, limitMark } from './limit-mark.ts';
import { BLANK, baseline, type Sheet, styleOf, TICK } from './sheet.ts';
import { LIMIT_WORD_PAD, statePlate } from './state-plate.ts';

export interface Column {
  readonly head: string;
  /** mm; a column without one shares what is left, by `share`. */
  readonly width?: number;
  readonly share?: number;
  readonly align?: 'left' | 'right' | 'middle';
  readonly style?: StyleName;
}

/** What stands in a cell of a table: text, a ruled blank, a square to tick, or a limit's mark and word. */
export type Cell =
  | string
  | { readonly text: string; readonly style: StyleName }
  | { readonly blank: true; readonly unit?: string }
  | { readonly tick: true }
  | { readonly mark: MarkInput };

export interface Row {
  readonly cells: readonly Cell[];
  /** Least height, mm. */
  readonly least?: number;
  /** A line over all columns that heads the rows under it, instead of cells. */
  readonly heading?: string;
}

/** Space between columns, and above and below a row's text, mm. */
const GUTTER = 3;
const PAD = 0.9;

export function columnWidths(columns: readonly Column[], width: number): number[] {
  const fixed = columns.reduce((sum, it) => sum + (it.width ?? 0), 0) + GUTTER * (columns.length - 1);
  const shares = columns.reduce((sum, it) => sum + (it.width === undefined ? (it.share ?? 1) : 0), 0);
  return columns.map((it) => it.width ?? ((width - fixed) * (it.share ?? 1)) / Math.max(shares, 1e-9));
}

const textOf = (cell: Cell): string => (typeof cell === 'string' ? cell : 'text' in cell ? cell.text : '');

const styleIn = (cell: Cell, column: Column): StyleName =>
  typeof cell !== 'string' && 'text' in cell ? cell.style : (column.style ?? 'text');

function cellHeight(sheet: Sheet, cell: Cell, column: Column, width: number): number {
  if (typeof cell !== 'string') {
    if ('blank' in cell) return BLANK - 2 * PAD;
    if ('tick' in cell) return TICK + PAD;
    if ('mark' in cell) return LIMIT_MARK.cell[1] + LIMIT_WORD_PAD;
  }
  return sheet.textHeight(textOf(cell), width, styleIn(cell, column));
}

export function headHeight(sheet: Sheet, columns: readonly Column[], width: number): number {
  const widths = columnWidths(columns, width);
  return Math.max(...columns.map((it, i) => sheet.textHeight(it.head, widths[i] ?? 0, 'label'))) + 2 * PAD;
}

export function rowHeight(sheet: Sheet, row: Row, columns: readonly Column[], width: number): number {
  if (row.heading !== undefined) return styleOf('section').line + 3 * PAD;
  const widths = columnWidths(columns, width);
  const heights = row.cells.map((cell, i) =>
    cellHeight(sheet, cell, columns[i] ?? { head: '' }, widths[i] ?? 0),
  );
  return Math.max(row.least ?? 0, Math.max(0, ...heights) + 2 * PAD);
}

/** Heads of the columns with the rule under them; gives back the y under it. */
export function tableHead(
  sheet: Sheet,
  columns: readonly Column[],
  x: number,
  y: number,
  width: number,
): number {
  const widths = columnWidths(columns, width);
  const foot = y + headHeight(sheet, columns, width);
  let left = x;
  for (const [i, { head, align }] of columns.entries()) {
    const its = widths[i] ?? 0;
    const high = sheet.textHeight(head, its, 'label');
    const at = align === 'right' ? left + its : align === 'middle' ? left + its / 2 : left;
    sheet.text(head, at, foot - PAD - high, { style: 'label', width: its, align: align ?? 'left' });
    left += its + GUTTER;
  }
  sheet.line(x, foot, x + width, foot, { line: LINE.outline });
  return foot;
}

/** One row with the hair rule under it; gives back the y under it. */
export function tableRow(
  sheet: Sheet,
  row: Row,
  columns: readonly Column[],
  x: number,
  y: number,
  width: number,
): number {
  const foot = y + rowHeight(sheet, row, columns, width);
  if (row.heading !== undefined) {
    sheet.text(row.heading, x, y + 2 * PAD, { style: 'section' });
    sheet.line(x, foot, x + width, foot, { line: LINE.thin });
    return foot;
  }
  const widths = columnWidths(columns, width);
  const isWritten = row.cells.some((cell) => typeof cell !== 'string' && 'blank' in cell);
  // Texts of different sizes stand on one baseline.
  const deepest = Math.max(
    ...row.cells.map((cell, i) => baseline(styleOf(styleIn(cell, columns[i] ?? { head: '' })))),
  );
  let left = x;
  for (const [i, cell] of row.cells.entries()) {
    const column = columns[i] ?? { head: '' };
    const its = widths[i] ?? 0;
    const at = column.align === 'right' ? left + its : column.align === 'middle' ? left + its / 2 : left;
    if (typeof cell !== 'string' && 'blank' in cell) {
      if (cell.unit !== undefined)
        sheet.text(cell.unit, left + its - 0.5, foot - styleOf('small').line - 0.3, {
          style: 'small',
          align: 'right',
        });
    } else if (typeof cell !== 'string' && 'tick' in cell) {
      sheet.tick(column.align === 'middle' ? at - TICK / 2 : left, y + (foot - y - TICK) / 2);
    } else if (typeof cell !== 'string' && 'mark' in cell) {
      limitMark(sheet, cell.mark, left, y + PAD + LIMIT_WORD_PAD / 2);
      statePlate(sheet, cell.mark.state, left + LIMIT_MARK.cell[0] + 2, y + PAD);
    } else {
      const style = styleIn(cell, column);
      sheet.text(textOf(cell), at, y + PAD + deepest - baseline(styleOf(style)), {
        style,
        width: its,
        align: column.align ?? 'left',
      });
    }
    // To be written in, each column has a rule of its own.
    if (isWritten) sheet.line(left, foot, left + its, foot, { line: LINE.thin });
    left += its + GUTTER;
  }
  if (!isWritten) sheet.line(x, foot, x + width, foot, { line: LINE.axis });
  return foot;
}

/**
 * A table on one sheet; gives back the y under it. It does not look whether it fits: for a table that may run over,
 * use the flow's `table`.
 */
export function table(
  sheet: Sheet,
  columns: readonly Column[],
  rows: readonly Row[],
  x: number,
  y: number,
  width: number,
): number {
  let at = tableHead(sheet, columns, x, y, width);
  for (const row of rows) at = tableRow(sheet, row, columns, x, at, width);
  return at;
}
