import { NoAnswer } from '../../calc/answer.ts';
import { fitLine } from '../../calc/survey/line.ts';
import { suspiciousRows } from '../../calc/survey/suspicious.ts';
import type { TableRow } from '../../plan/edit/tables.ts';

/** A row that is on the line's picture. */
export interface FittedRow {
  /** Its place in the table, from 0. */
  readonly at: number;
  readonly height: number;
  readonly distance: number;
  /** Reading less line: plus when the face is further from the plumb line than the line says. */
  readonly off: number;
  readonly suspicious: boolean;
}

/** A plumb line's complete rows with the straight line through them; undefined while no line goes through them. */
export function fittedRows(
  rows: readonly TableRow[],
  offBy: number,
): { readonly rows: readonly FittedRow[]; readonly at: (height: number) => number } | undefined {
  const used = rows.flatMap(({ values: [height, distance] }, at) =>
    typeof height === 'number' && typeof distance === 'number' ? [{ at, height, distance }] : [],
  );
  const points = used.map(({ height, distance }) => [height, distance] as const);
  const line = fitLine(points);
  if (line instanceof NoAnswer) return undefined;
  const suspects = new Set(suspiciousRows(points, offBy).map((it) => it.at));
  return {
    at: (height) => line.intercept + line.slope * height,
    rows: used.map((row, i) => ({ ...row, off: line.residuals[i] ?? 0, suspicious: suspects.has(i) })),
  };
}
