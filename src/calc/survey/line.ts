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
}

/** How well a line is known; it takes a third point. */
export interface LineErrors {
  /** Standard deviation of the residuals, count − 2 degrees of freedom. */
  readonly deviation: number;
  readonly intercept: number;
  readonly slope: number;
}

type Point = readonly number[];

const mean = (values: readonly number[]): number => values.reduce((sum, it) => sum + it, 0) / values.length;

/**
 * The line through (x, y) points by ordinary least squares. The sums are taken about the means, which keeps the digits
 * that the textbook's sums of squares lose.
 */
export function fitLine(points: readonly Point[]): Line | NoAnswer {
  const count = points.length;
  if (count < 2) return new NoAnswer(`A line takes two rows or more; the table has ${count} in use.`);
  const xs = points.map((row) => row[0] ?? 0);
  const ys = points.map((row) => row[1] ?? 0);
  const [middle, level] = [mean(xs), mean(ys)];
  let spread = 0;
  let together = 0;
  for (let i = 0; i < count; i++) {
    const dx = (xs[i] as number) - middle;
    spread += dx * dx;
    together += dx * ((ys[i] as number) - level);
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
    residualSquares: residuals.reduce((sum, it) => sum + it * it, 0),
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
