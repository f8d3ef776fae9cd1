import { NoAnswer } from '../answer.ts';

/** A straight line through points by least squares, y = intercept + slope·x. */
export interface Line {
  readonly count: number;
  readonly intercept: number;
  readonly slope: number;
  /** Mean of x, and the sum of squares of x about it. */
  readonly middle: number;
  readonly spread: number;
  /** Point minus line, in the order given. */
  readonly residuals: readonly number[];
  readonly residualSquares: number;
  /** What each point counts, their mean 1; all 1 where the points say nothing of how far they may be off. */
  readonly weights: readonly number[];
}

/** How well a line is known; it takes a third point. */
export interface LineErrors {
  /** Standard deviation of the residuals, count − 2 degrees of freedom. */
  readonly deviation: number;
  readonly intercept: number;
  readonly slope: number;
}

type Point = readonly number[];

/** Mean of values whose weights have the mean 1. */
const mean = (values: readonly number[], weights: readonly number[]): number =>
  values.reduce((sum, it, i) => sum + it * (weights[i] as number), 0) / values.length;

/**
 * Weights of rows by the inverse square of what each may be off, the third figure of a row; all 1 when a row lacks it,
 * and when all are alike, so that such rows give the ordinary fit to the last digit.
 */
export function weightsOf(points: readonly Point[]): readonly number[] {
  const offBys = points.map((row) => row[2] ?? 0);
  const first = offBys[0] ?? 0;
  if (offBys.some((it) => !(it > 0)) || offBys.every((it) => it === first)) return points.map(() => 1);
  const raw = offBys.map((it) => 1 / (it * it));
  const all = raw.reduce((sum, it) => sum + it, 0);
  return raw.map((it) => (it * points.length) / all);
}

/**
 * The line through (x, y) points by least squares; where rows say as a third figure how far they may be off, each counts
 * by the inverse square of that. Spread and residual squares are then weighted, with weights of mean 1. The sums are taken about the means, which keeps the digits
 * that the textbook's sums of squares lose.
 */
export function fitLine(points: readonly Point[]): Line | NoAnswer {
  const count = points.length;
  if (count < 2) return new NoAnswer(`A line takes two rows or more; the table has ${count} in use.`);
  const xs = points.map((row) => row[0] ?? 0);
  const ys = points.map((row) => row[1] ?? 0);
  const weights = weightsOf(points);
  const [middle, level] = [mean(xs, weights), mean(ys, weights)];
  let spread = 0;
  let together = 0;
  for (let i = 0; i < count; i++) {
    const dx = (xs[i] as number) - middle;
    const weight = weights[i] as number;
    spread += weight * dx * dx;
    together += weight * dx * ((ys[i] as number) - level);
  }
  if (!(spread > 0)) return new NoAnswer('All rows are at the same height, so no line goes through them.');
  const slope = together / spread;
  const residuals = xs.map((x, i) => (ys[i] as number) - level - slope * (x - middle));
  return {
    count,
    intercept: level - slope * middle,
    slope,
    middle,
    spread,
    residuals,
    residualSquares: residuals.reduce((sum, it, i) => sum + (weights[i] as number) * it * it, 0),
    weights,
  };
}

/** Standard errors of a line; no answer with two points, which any line fits. */
export function lineErrors(line: Line): LineErrors | NoAnswer {
  const { count, middle, spread, residualSquares } = line;
  if (count < 3) return new NoAnswer('Two rows fit any line; take a third to see how well it is known.');
  const deviation = Math.sqrt(residualSquares / (count - 2));
  return {
    deviation,
    slope: deviation / Math.sqrt(spread),
    intercept: deviation * Math.sqrt(1 / count + (middle * middle) / spread),
  };
}
