/** The least and the greatest of a column's numbers; NaN where one of them is NaN. */
export interface Extent {
  least: number;
  most: number;
}

/** Measures the first `count` numbers, four at a time: each comparison waits for the one before it. */
export function measure(column: Float64Array, count: number, extent: Extent): void {
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
  extent.least = Math.min(low1, low2, low3, low4);
  extent.most = Math.max(high1, high2, high3, high4);
}
