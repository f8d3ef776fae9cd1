/** A straight line fitted to points by least squares, with what the points say about how sure it is. */
export interface StraightLine {
  readonly count: number;
  readonly slope: number;
  /** Value at x = 0. */
  readonly intercept: number;
  /** Standard errors; NaN with fewer than three points, which leave nothing over to tell. */
  readonly slopeError: number;
  readonly interceptError: number;
  /** Sum of the squared residuals. */
  readonly residualSum: number;
  /** Standard deviation of the residuals. */
  readonly residualDeviation: number;
  /** Share of the variance that the line explains. */
  readonly explained: number;
  /** What each point is off the line, in its y. */
  readonly residuals: readonly number[];
}

/**
 * Least-squares line through points (x, y). Sums are taken about the means, so that large offsets do not eat digits.
 * Undefined with fewer than two different x.
 */
export function straightLine(points: readonly (readonly [x: number, y: number])[]): StraightLine | undefined {
  const count = points.length;
  if (count < 2) return undefined;
  const meanX = points.reduce((sum, [x]) => sum + x, 0) / count;
  const meanY = points.reduce((sum, [, y]) => sum + y, 0) / count;
  let xx = 0;
  let xy = 0;
  let yy = 0;
  for (const [x, y] of points) {
    xx += (x - meanX) ** 2;
    xy += (x - meanX) * (y - meanY);
    yy += (y - meanY) ** 2;
  }
  if (xx === 0) return undefined;
  const slope = xy / xx;
  const intercept = meanY - slope * meanX;
  const residuals = points.map(([x, y]) => y - meanY - slope * (x - meanX));
  const residualSum = residuals.reduce((sum, it) => sum + it * it, 0);
  const residualDeviation = Math.sqrt(residualSum / (count - 2));
  return {
    count,
    slope,
    intercept,
    slopeError: residualDeviation / Math.sqrt(xx),
    interceptError: residualDeviation * Math.sqrt(1 / count + (meanX * meanX) / xx),
    residualSum,
    residualDeviation,
    explained: yy === 0 ? 1 : 1 - residualSum / yy,
    residuals,
  };
}
