import { NoAnswer } from '../../calc/answer.ts';
import { fitLine } from '../../calc/survey/line.ts';
import { suspiciousRows } from '../../calc/survey/suspicious.ts';
import type { TableRow } from '../../plan/edit/tables.ts';
import { weighedRows } from '../../plan/tables.ts';
import type { TableTemplate } from '../../plan/template.ts';

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
  table: Pick<TableTemplate, 'name' | 'off_by'>,
): { readonly rows: readonly FittedRow[]; readonly at: (height: number) => number } | undefined {
  const weighed = weighedRows({
    name: table.name,
    columns: [],
    rows: rows.map((row) => row.values),
    notes: rows.map((row) => row.note),
  });
  const used = weighed.flatMap(([height, distance, mayBe], at) =>
    typeof height === 'number' && typeof distance === 'number'
      ? [{ at, height, distance, mayBe: mayBe ?? table.off_by }]
      : [],
  );
  const points = used.map(({ height, distance, mayBe }) => [height, distance, mayBe] as const);
  const line = fitLine(points);
  if (line instanceof NoAnswer) return undefined;
  const suspects = new Set(suspiciousRows(points, table.off_by).map((it) => it.at));
  return {
    at: (height) => line.intercept + line.slope * height,
    rows: used.map(({ mayBe: _mayBe, ...row }, i) => ({
      ...row,
      off: line.residuals[i] ?? 0,
      suspicious: suspects.has(i),
    })),
  };
}
