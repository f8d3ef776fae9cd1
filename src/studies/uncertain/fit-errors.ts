import { stretch, widening } from '../../calc/uncertainty/student-pair.ts';
import type { InFit, ReadingError } from './reading-error.ts';

/** What is fitted through the rows of one table: where its figures stand among the errors, and its two factors. */
export interface Fit {
  readonly of: string;
  readonly freedom: number | null;
  readonly rows: readonly number[];
  readonly factors: readonly [number, number];
}

/** Places of the errors that move with each fit, by its table. */
export function rowsByFit(errors: readonly ReadingError[]): ReadonlyMap<string, readonly number[]> {
  const found = new Map<string, number[]>();
  for (const [i, { fit }] of errors.entries()) {
    if (fit !== undefined) found.set(fit.of, [...(found.get(fit.of) ?? []), i]);
  }
  return found;
}

/** A figure where its fit is off by so many deviations of its two errors. */
export const figureAt = ({ middle, by, least, most }: InFit, first: number, second: number): number => {
  const within = Math.min(Math.max(first, least ?? first), most ?? first);
  return middle + by[0] * within + by[1] * second;
};

/** Turns scores of a fit's two factors into its two errors, in deviations. */
export function fitErrors(
  freedom: number | null,
  scores: readonly [ArrayLike<number>, ArrayLike<number>],
  count: number,
): readonly [Float64Array, Float64Array] {
  const errors = [new Float64Array(count), new Float64Array(count)] as const;
  for (let n = 0; n < count; n++) {
    const [a, b] = [scores[0][n] ?? 0, scores[1][n] ?? 0];
    const by = stretch(a, b, freedom);
    errors[0][n] = by * a;
    errors[1][n] = by * b;
  }
  return errors;
}

/** A fit's errors with all they move made so much larger. */
const scaled = (fit: InFit, by: number): InFit => ({
  ...fit,
  by: [fit.by[0] * by, fit.by[1] * by],
  ...(fit.least === undefined ? {} : { least: fit.least / by }),
  ...(fit.most === undefined ? {} : { most: fit.most / by }),
});

/** An error half as large. */
export const halvedError = (error: ReadingError): ReadingError => ({
  ...error,
  offBy: error.offBy / 2,
  ...(error.fit === undefined ? {} : { fit: scaled(error.fit, 0.5) }),
});

/**
 * The same error with a variance: Student's law has none with one or two degrees of freedom, and one that no sample
 * settles with three or four, so that the normal law stands for it that is as wide at 95 %.
 */
export const withVariance = (error: ReadingError): ReadingError =>
  error.fit === undefined
    ? error
    : { ...error, fit: { ...scaled(error.fit, widening(error.fit.freedom)), freedom: null } };
