import { chanceOf, type Estimate, meanOf } from '../../calc/uncertainty/interval.ts';
import { sobolPoints } from '../../calc/uncertainty/sobol.ts';
import { isLacking, look } from '../look.ts';
import type { Meter } from '../meter.ts';
import type { PointEvaluator } from '../points.ts';
import type { Progress } from '../study.ts';
import { type ErrorModel, fromChances } from '../uncertain/error-model.ts';
import type { OddsAsk, Sampled } from './ask.ts';

/** Hits from which on repeats give a better interval than counting does. */
const ENOUGH = 40;

class Tally {
  readonly rates: number[] = [];
  hits = 0;
  count = 0;
  lacking = 0;
  #rooms = 0;
  #sum = 0;
  #squares = 0;
  #shift: number | undefined;

  add(fails: ArrayLike<number>, lacks: (n: number) => boolean, room?: ArrayLike<number>): void {
    let hits = 0;
    for (let n = 0; n < fails.length; n++) {
      if (fails[n] === 1) {
        hits++;
        if (lacks(n)) this.lacking++;
      }
      const here = room?.[n];
      if (here === undefined || Number.isNaN(here)) continue;
      // Sums about the first room keep their figures.
      this.#shift ??= here;
      const off = here - this.#shift;
      this.#rooms++;
      this.#sum += off;
      this.#squares += off * off;
    }
    this.rates.push(hits / fails.length);
    this.hits += hits;
    this.count += fails.length;
  }

  result(certainty: number): Sampled {
    const { hits, count, lacking } = this;
    const mean = this.#sum / this.#rooms;
    const variance = this.#squares / this.#rooms - mean * mean;
    const has = this.#rooms > 1 && this.#shift !== undefined;
    return {
      fails: chanceBehind(this.rates, hits, count, certainty),
      hits,
      count,
      lacking,
      mean: has ? mean + (this.#shift ?? 0) : null,
      deviation: has ? Math.sqrt(Math.max(0, variance)) : null,
    };
  }
}

/** The chance behind repeats of scrambled points; by counting where hits, or misses, are few. */
function chanceBehind(rates: readonly number[], hits: number, count: number, certainty: number): Estimate {
  if (Math.min(hits, count - hits) < ENOUGH) return chanceOf(hits, count, certainty);
  const { value, low, high } = meanOf(rates, certainty);
  return { value, low: Math.max(0, low), high: Math.min(1, high) };
}

export interface SampledAll {
  readonly limits: readonly Sampled[];
  readonly together: Sampled;
}

/**
 * The chance that each limit, and any of them, does not hold, from independent repeats of low-discrepancy points over
 * all errors. `order` lists the model's factors, those that matter most first: early dimensions are spread best.
 */
export function* sampled(
  evaluator: PointEvaluator,
  model: ErrorModel,
  order: readonly number[],
  ask: Pick<OddsAsk, 'repeats' | 'points' | 'seed' | 'certainty'>,
  meter: Meter,
): Generator<Progress, SampledAll, void> {
  const { repeats, points, seed, certainty } = ask;
  meter.expect(repeats * points);
  const tallies = evaluator.limits.map(() => new Tally());
  const together = new Tally();
  for (let repeat = 0; repeat < repeats; repeat++) {
    const cube = sobolPoints(order.length, points, seed * 1000 + repeat);
    const chances: Float64Array[] = [];
    for (const [dimension, factor] of order.entries())
      chances[factor] = cube[dimension] ?? new Float64Array(points);
    const looked = yield* look(evaluator, fromChances(model, chances, points), points, meter);
    const any = new Uint8Array(points);
    const anyPast = new Uint8Array(points);
    for (const [i, tally] of tallies.entries()) {
      const [fails, state] = [looked.fails[i] ?? any, looked.state[i] ?? any];
      tally.add(fails, (n) => looked.refused[n] === 1 || isLacking(state[n]), looked.room[i]);
      for (let n = 0; n < points; n++) {
        if (fails[n] !== 1) continue;
        any[n] = 1;
        if (!isLacking(state[n])) anyPast[n] = 1;
      }
    }
    together.add(any, (n) => anyPast[n] !== 1);
  }
  return { limits: tallies.map((it) => it.result(certainty)), together: together.result(certainty) };
}
