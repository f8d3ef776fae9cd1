import { normalBelow, normalQuantile } from '../../calc/uncertainty/normal.ts';
import { sobolPoints } from '../../calc/uncertainty/sobol.ts';
import { look } from '../look.ts';
import type { Meter } from '../meter.ts';
import type { PointEvaluator } from '../points.ts';
import type { Progress } from '../study.ts';
import { type ErrorModel, fromChances } from './error-model.ts';
import { liveFactors } from './live-factors.ts';

/** Places at which each factor is moved by itself. */
const PLACES = 8;

/** Part of the places drawn wider than the errors, and all that is moved to: what matters in the tails alone is seen. */
const WIDE = PLACES / 2;
const WIDER = 2.5;
/** Deviations that no place lies beyond: further out a chance is 1 to the last digit, and its place without end. */
const FURTHEST = 7;

const wider = (chance: number): number =>
  normalBelow(Math.max(-FURTHEST, Math.min(FURTHEST, WIDER * normalQuantile(chance))));

const differs = (a: number | undefined, b: number | undefined): boolean => !Object.is(a, b);

/**
 * Which factors reach which limit: moved by themselves, from several places all over the errors' range, they change
 * its room or how it stands. One list of factors for each limit of the evaluator.
 */
export function* reaches(
  evaluator: PointEvaluator,
  model: ErrorModel,
  seed: number,
  meter: Meter,
): Generator<Progress, number[][], void> {
  const live = liveFactors(evaluator, model);
  const dimensions = live.length;
  const from = sobolPoints(dimensions, PLACES, seed).map((column) =>
    column.map((chance, n) => (n < WIDE ? wider(chance) : chance)),
  );
  const to = sobolPoints(dimensions, PLACES, seed + 1).map((column) => column.map(wider));
  const count = PLACES * (dimensions + 1);
  const chances: Float64Array[] = [];
  for (const [dimension, column] of from.entries()) {
    const all = new Float64Array(count);
    for (let block = 0; block <= dimensions; block++) {
      all.set(block === dimension + 1 ? (to[dimension] ?? column) : column, block * PLACES);
    }
    chances[live[dimension] as number] = all;
  }
  meter.expect(count);
  const { room, state } = yield* look(evaluator, fromChances(model, chances, count), count, meter);
  return evaluator.limits.map((_, limit) =>
    live.flatMap((factor, dimension) => {
      for (let n = 0; n < PLACES; n++) {
        const moved = (dimension + 1) * PLACES + n;
        if (
          differs(room[limit]?.[n], room[limit]?.[moved]) ||
          differs(state[limit]?.[n], state[limit]?.[moved])
        )
          return [factor];
      }
      return [];
    }),
  );
}
