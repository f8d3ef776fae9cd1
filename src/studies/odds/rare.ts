import { type Estimate, meanOf } from '../../calc/uncertainty/interval.ts';
import { normalAbove, normalQuantile } from '../../calc/uncertainty/normal.ts';
import { sobolPoints } from '../../calc/uncertainty/sobol.ts';
import { look } from '../look.ts';
import type { Meter } from '../meter.ts';
import type { PointEvaluator } from '../points.ts';
import type { Progress } from '../study.ts';
import { type ErrorModel, fromScores } from '../uncertain/error-model.ts';

/** A small chance, found by sampling where it comes from. */
export interface Rare {
  readonly fails: Estimate;
  /** Distances of the design points it was sampled about, in deviations. */
  readonly distances: readonly number[];
  /** Failing points behind it. */
  readonly hits: number;
}

export interface RareAsk {
  readonly repeats: number;
  readonly points: number;
  readonly seed: number;
  readonly certainty: number;
}

/** Part of the points drawn as the errors themselves are, lest a way to fail was overlooked. */
const PLAIN = 0.1;

/** Where points are drawn about: scores of every factor, and the part of all points. */
interface Centre {
  readonly scores: readonly number[];
  readonly part: number;
}

function centresFrom(points: readonly (readonly number[])[], factors: number): Centre[] {
  const chances = points.map((it) => Math.max(normalAbove(Math.hypot(...it)), 1e-300));
  const sum = chances.reduce((a, b) => a + b, 0);
  // No point is given less than a twentieth of an even part: its distance says nothing of how the bound bends there.
  const parts = chances.map((it) => it / sum + 0.05 / points.length);
  const all = parts.reduce((a, b) => a + b, 0);
  return [
    { scores: Array(factors).fill(0), part: points.length === 0 ? 1 : PLAIN },
    ...points.map((scores, i) => ({ scores, part: ((1 - PLAIN) * (parts[i] ?? 0)) / all })),
  ];
}

interface Drawn {
  readonly scores: readonly Float64Array[];
  /** How likely each point is by the errors themselves over how likely it was to be drawn. */
  readonly weights: Float64Array;
  readonly count: number;
}

/** Points about all centres, each centre's own number of them, weighed against the mixture (the balance heuristic). */
function draw(centres: readonly Centre[], factors: number, points: number, seed: number): Drawn {
  const counts = centres.map(({ part }) => Math.max(8, Math.round(part * points)));
  const count = counts.reduce((a, b) => a + b, 0);
  const scores = Array.from({ length: factors }, () => new Float64Array(count));
  let from = 0;
  for (const [k, centre] of centres.entries()) {
    const own = counts[k] ?? 0;
    for (const [factor, column] of sobolPoints(factors, own, seed + 7919 * k).entries()) {
      const [into, by] = [scores[factor], centre.scores[factor] ?? 0];
      for (let n = 0; n < own; n++) if (into) into[from + n] = normalQuantile(column[n] ?? 0.5) + by;
    }
    from += own;
  }
  const squares = centres.map((it) => it.scores.reduce((sum, s) => sum + s * s, 0));
  const moved = centres.map((it) => it.scores.flatMap((s, factor) => (s === 0 ? [] : [factor])));
  const weights = Float64Array.from({ length: count }, (_, n) => {
    let below = 0;
    for (const [k, centre] of centres.entries()) {
      let along = 0;
      for (const factor of moved[k] ?? []) along += (centre.scores[factor] ?? 0) * (scores[factor]?.[n] ?? 0);
      below += ((counts[k] ?? 0) / count) * Math.exp(along - (squares[k] ?? 0) / 2);
    }
    return 1 / below;
  });
  return { scores, weights, count };
}

/** Centres moved to where failing points about them really lie, weighed. */
function recentred(
  centres: readonly Centre[],
  drawn: Drawn,
  fails: Uint8Array,
): readonly (readonly number[])[] {
  const sums = centres.map(({ scores }) => ({ weight: 0, count: 0, at: scores.map(() => 0) }));
  for (let n = 0; n < drawn.count; n++) {
    if (fails[n] !== 1) continue;
    let [best, most] = [0, Number.NEGATIVE_INFINITY];
    for (const [k, { scores, part }] of centres.entries()) {
      if (k === 0) continue;
      const apart = scores.reduce((sum, s, factor) => sum + ((drawn.scores[factor]?.[n] ?? 0) - s) ** 2, 0);
      const likely = Math.log(part) - apart / 2;
      if (likely > most) [best, most] = [k, likely];
    }
    const sum = sums[best];
    const weight = drawn.weights[n] ?? 0;
    if (sum === undefined || best === 0) continue;
    sum.weight += weight;
    sum.count++;
    for (const factor of sum.at.keys())
      sum.at[factor] = (sum.at[factor] ?? 0) + weight * (drawn.scores[factor]?.[n] ?? 0);
  }
  return centres.slice(1).map(({ scores }, i) => {
    const sum = sums[i + 1];
    if (sum === undefined || sum.count < 30) return scores;
    // Factors without a part in it keep their middle: their means there are chance alone.
    return scores.map((s, factor) => (s === 0 ? 0 : (sum.at[factor] ?? 0) / sum.weight));
  });
}

/**
 * The chance that any of the evaluator's limits fails, by importance sampling about the design points given: first a
 * pilot that shifts each centre to where the limit really fails, then independent repeats that never look back.
 */
export function* rare(
  evaluator: PointEvaluator,
  model: ErrorModel,
  points: readonly (readonly number[])[],
  ask: RareAsk,
  meter: Meter,
): Generator<Progress, Rare, void> {
  const factors = model.factors.length;
  function* failing(drawn: Drawn): Generator<Progress, Uint8Array, void> {
    meter.expect(drawn.count);
    const { fails } = yield* look(
      evaluator,
      fromScores(model, drawn.scores, drawn.count),
      drawn.count,
      meter,
    );
    return Uint8Array.from({ length: drawn.count }, (_, n) => (fails.some((it) => it[n] === 1) ? 1 : 0));
  }
  let centres = centresFrom(points, factors);
  const pilot = draw(centres, factors, 2 * ask.points, ask.seed * 1000 + 999_983);
  centres = centresFrom(recentred(centres, pilot, yield* failing(pilot)), factors);
  const rates: number[] = [];
  let hits = 0;
  for (let repeat = 0; repeat < ask.repeats; repeat++) {
    const drawn = draw(centres, factors, ask.points, ask.seed * 1000 + 101 * repeat);
    const fails = yield* failing(drawn);
    let sum = 0;
    for (let n = 0; n < drawn.count; n++) {
      if (fails[n] !== 1) continue;
      hits++;
      sum += drawn.weights[n] ?? 0;
    }
    rates.push(sum / drawn.count);
  }
  const { value, low, high } = meanOf(rates, ask.certainty);
  return {
    fails: { value, low: Math.max(0, low), high: Math.min(1, high) },
    distances: points.map((it) => Math.hypot(...it)),
    hits,
  };
}
