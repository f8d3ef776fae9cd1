import { type Estimate, ratioOf } from '../../calc/uncertainty/interval.ts';
import { sobolPoints } from '../../calc/uncertainty/sobol.ts';
import { look } from '../look.ts';
import type { Meter } from '../meter.ts';
import type { PointEvaluator } from '../points.ts';
import type { Progress } from '../study.ts';
import {
  type ErrorModel,
  errorModel,
  type Factor,
  fromChances,
  partsAmong,
} from '../uncertain/error-model.ts';
import { withVariance } from '../uncertain/fit-errors.ts';

/** What one factor, or a fit as a whole, has in the variance of a room: by itself, and with all it does together with others. */
export interface Share {
  readonly factor: Factor;
  readonly alone: Estimate;
  readonly total: Estimate;
}

export interface SharesAsk {
  /** Places in the model's list of factors whose shares are wanted; the others are taken to have none. */
  readonly factors: readonly number[];
  readonly repeats: number;
  /** Points in each repeat; a power of two. */
  readonly points: number;
  readonly seed: number;
  /** Certainty of the intervals. */
  readonly certainty: number;
}

/** One limit's rooms at two independent sets of points, and at the first with one part taken from the second. */
interface Rooms {
  readonly a: Float64Array;
  readonly b: Float64Array;
  readonly mixed: readonly Float64Array[];
}

interface Sums {
  readonly alone: number;
  readonly total: number;
  readonly variance: number;
}

/** Sums over one repeat: A. Saltelli and others (2010) for the share alone, M. Jansen (1999) for the total one. */
function sums({ a, b, mixed }: Rooms, part: number): Sums {
  const with_ = mixed[part] ?? a;
  let [mean, counted] = [0, 0];
  const usable = (n: number): boolean =>
    Number.isFinite((a[n] ?? Number.NaN) + (b[n] ?? 0) + (with_[n] ?? 0));
  for (let n = 0; n < a.length; n++) {
    if (!usable(n)) continue;
    mean += (a[n] ?? 0) + (b[n] ?? 0);
    counted += 2;
  }
  mean /= counted;
  let [alone, total, variance] = [0, 0, 0];
  for (let n = 0; n < a.length; n++) {
    if (!usable(n)) continue;
    const [fa, fb, fm] = [(a[n] ?? 0) - mean, (b[n] ?? 0) - mean, (with_[n] ?? 0) - mean];
    alone += fb * (fm - fa);
    total += 0.5 * (fa - fm) ** 2;
    variance += 0.5 * (fa * fa + fb * fb);
  }
  return { alone, total, variance };
}

/**
 * Shares of each limit's variance of room over the errors of all readings, by independent repeats of low-discrepancy
 * points; one list for each limit of the evaluator. Points at which a room has no answer are left out. A limit whose
 * room does not vary has no shares.
 */
export function* shares(
  evaluator: PointEvaluator,
  model: ErrorModel,
  ask: SharesAsk,
  meter: Meter,
): Generator<Progress, Share[][], void> {
  const { repeats, points, seed, certainty } = ask;
  const drawn = errorModel(model.errors.map(withVariance), model.share);
  const parts = partsAmong(drawn, ask.factors);
  const dimensions = drawn.factors.length;
  const blocks = 2 + parts.length;
  meter.expect(repeats * blocks * points);
  const found = evaluator.limits.map(() => parts.map(() => [] as Sums[]));
  for (let repeat = 0; repeat < repeats; repeat++) {
    const cube = sobolPoints(2 * dimensions, points, seed * 1000 + repeat);
    const columns = Array.from({ length: dimensions }, (_, factor) => {
      const [a, b] = [cube[factor], cube[dimensions + factor]];
      const all = new Float64Array(blocks * points);
      for (let block = 0; block < blocks; block++) {
        const isOther = block === 1 || parts[block - 2]?.includes(factor) === true;
        all.set((isOther ? b : a) ?? [], block * points);
      }
      return all;
    });
    const table = fromChances(drawn, columns, blocks * points);
    const { room } = yield* look(evaluator, table, blocks * points, meter);
    for (const [limit, of] of room.entries()) {
      const block = (n: number): Float64Array => of.subarray(n * points, (n + 1) * points);
      const rooms = { a: block(0), b: block(1), mixed: parts.map((_, n) => block(n + 2)) };
      for (const [n] of parts.entries()) found[limit]?.[n]?.push(sums(rooms, n));
    }
  }
  return found.map((ofLimit) =>
    ofLimit.flatMap((repeated, n): Share[] => {
      const factor = model.factors[parts[n]?.[0] ?? -1];
      const variance = repeated.map((it) => it.variance);
      if (factor === undefined || !(variance.reduce((a, b) => a + b, 0) > 0)) return [];
      const of = (part: 'alone' | 'total'): Estimate =>
        ratioOf(
          repeated.map((it) => it[part]),
          variance,
          certainty,
        );
      return [{ factor, alone: of('alone'), total: of('total') }];
    }),
  );
}
