import type { Column } from '../../studies/points.ts';

/** The least and the greatest of each column's numbers; NaN where a column holds something else or a NaN. */
export interface Extents {
  readonly lows: Float64Array;
  readonly highs: Float64Array;
}

export const extentsFor = (columns: number): Extents => ({
  lows: new Float64Array(columns),
  highs: new Float64Array(columns),
});

/** Brings one column's extent up to date. Four numbers at a time: each waits for the one before it. */
function measure(column: Float64Array, count: number, { lows, highs }: Extents, place: number): void {
  const first = column[0] as number;
  let [low1, low2, low3, low4] = [first, first, first, first];
  let [high1, high2, high3, high4] = [first, first, first, first];
  const inFours = count - (count % 4);
  for (let i = 0; i < inFours; i += 4) {
    const [a, b] = [column[i] as number, column[i + 1] as number];
    const [c, d] = [column[i + 2] as number, column[i + 3] as number];
    low1 = Math.min(low1, a);
    low2 = Math.min(low2, b);
    low3 = Math.min(low3, c);
    low4 = Math.min(low4, d);
    high1 = Math.max(high1, a);
    high2 = Math.max(high2, b);
    high3 = Math.max(high3, c);
    high4 = Math.max(high4, d);
  }
  for (let i = inFours; i < count; i++) {
    low1 = Math.min(low1, column[i] as number);
    high1 = Math.max(high1, column[i] as number);
  }
  lows[place] = Math.min(low1, low2, low3, low4);
  highs[place] = Math.max(high1, high2, high3, high4);
}

/** Brings the extents of all columns up to date. */
export function measureAll(columns: readonly Column[], count: number, extents: Extents): void {
  for (const [place, column] of columns.entries()) {
    if (column instanceof Float64Array && column.length >= count && count > 0) {
      measure(column, count, extents, place);
    } else {
      extents.lows[place] = Number.NaN;
      extents.highs[place] = Number.NaN;
    }
  }
}
