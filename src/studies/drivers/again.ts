import { middlePart } from '../../calc/uncertainty/middle-part.ts';
import { sobolPoints } from '../../calc/uncertainty/sobol.ts';
import { look } from '../look.ts';
import type { Meter } from '../meter.ts';
import type { PointEvaluator } from '../points.ts';
import type { Progress } from '../study.ts';
import { type ErrorModel, type Factor, fromChances } from '../uncertain/error-model.ts';
import { halvedError } from '../uncertain/fit-errors.ts';

/** What knowing one factor to half would do to the spread of a room. */
export interface Again {
  readonly factor: Factor;
  /** Half the width that holds 95 % of the rooms, as the readings are and with this one known to half. */
  readonly now: number;
  readonly better: number;
}

const POINTS = 2048;
const INSIDE = 0.95;

/** Half the width of the middle part that holds the share given of all answers. */
export function halfWidth(values: Float64Array, share: number): number {
  const { low, high } = middlePart(values, share);
  return (high - low) / 2;
}

/** The same errors with one factor's halved: what it moves is drawn towards what it would be without it. */
function halved(model: ErrorModel, factor: number): ErrorModel {
  const moves = new Set(model.factors[factor]?.moves);
  return {
    ...model,
    errors: model.errors.map((it, i) => (moves.has(i) ? halvedError(it) : it)),
  };
}

/**
 * How far the spread of each limit's room would shrink if what stands behind one factor were known to half; one list
 * for each limit. A shared factor stands for its instrument: every reading taken with it is then known to half.
 */
export function* again(
  evaluator: PointEvaluator,
  model: ErrorModel,
  factors: readonly number[],
  seed: number,
  meter: Meter,
): Generator<Progress, Again[][], void> {
  const chances = sobolPoints(model.factors.length, POINTS, seed);
  meter.expect((factors.length + 1) * POINTS);
  const widths: number[][] = [];
  for (const of of [model, ...factors.map((it) => halved(model, it))]) {
    const { room } = yield* look(evaluator, fromChances(of, chances, POINTS), POINTS, meter);
    widths.push(room.map((it) => halfWidth(it, INSIDE)));
  }
  return evaluator.limits.map((_, limit) =>
    factors.flatMap((it, n): Again[] => {
      const factor = model.factors[it];
      const [now, better] = [widths[0]?.[limit], widths[n + 1]?.[limit]];
      if (factor === undefined || now === undefined || better === undefined) return [];
      return Number.isNaN(now) || Number.isNaN(better) ? [] : [{ factor, now, better }];
    }),
  );
}
