import { type GridRow, isHead } from './rows.ts';

/** The nearest row at or below a place that can be chosen; the place itself when there is none. */
export function belowHeads(rows: readonly GridRow[], at: number): number {
  let to = at;
  while (isHead(rows[to])) to++;
  return rows[to] === undefined ? at : to;
}

/** How far a move up or down really goes: over headings, and no further than the first or last row that can be chosen. */
export function moveOver(rows: readonly GridRow[], at: number, by: number): number {
  if (by === 0) return 0;
  const step = Math.sign(by);
  let to = Math.min(rows.length - 1, Math.max(0, at + by));
  while (isHead(rows[to])) to += step;
  if (rows[to] === undefined) to = step < 0 ? belowHeads(rows, 0) : at;
  return to - at;
}
