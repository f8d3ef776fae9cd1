import { chanceOf, type Estimate, meanOf } from '../../calc/uncertainty/interval.ts';
import { middlePart } from '../../calc/uncertainty/middle-part.ts';
import { SobolSequence } from '../../calc/uncertainty/sobol.ts';
import { BATCH, isFailing, isLacking } from '../look.ts';
import type { Meter } from '../meter.ts';
import type { LimitColumns, PointEvaluator } from '../points.ts';
import type { Progress } from '../study.ts';
import { type ErrorModel, fromChances } from '../uncertain/error-model.ts';
import { liveFactors } from '../uncertain/live-factors.ts';
import type { OddsAsk, Sampled } from './ask.ts';

/** Hits from which on repeats give a better interval than counting does. */
const ENOUGH = 40;

/** Counts what comes up, repeat by repeat. */
class Tally {
  readonly rates: number[] = [];
  hits = 0;
  count = 0;
  lacking = 0;
  #before = 0;
  #countBefore = 0;
  #rooms = 0;
  #sum = 0;
  #squares = 0;
  #shift = Number.NaN;

  /** Counts more points of a repeat: how many there are, how many fail, and how many of those for want of an answer. */
  add(count: number, hits: number, lacking: number): void {
    this.count += count;
    this.hits += hits;
    this.lacking += lacking;
  }

  addRooms(room: Float64Array, count: number): void {
    let [shift, rooms, sum, squares] = [this.#shift, this.#rooms, this.#sum, this.#squares];
    for (let n = 0; n < count; n++) {
      const here = room[n] as number;
      if (here !== here) continue;
      // Sums about the first room keep their figures.
      if (shift !== shift) shift = here;
      const off = here - shift;
      rooms++;
      sum += off;
      squares += off * off;
    }
    [this.#shift, this.#rooms, this.#sum, this.#squares] = [shift, rooms, sum, squares];
  }

  endRepeat(): void {
    this.rates.push((this.hits - this.#before) / (this.count - this.#countBefore));
    this.#before = this.hits;
    this.#countBefore = this.count;
  }

  result(certainty: number): Sampled {
    const { hits, count, lacking } = this;
    const mean = this.#sum / this.#rooms;
    const variance = this.#squares / this.#rooms - mean * mean;
    const has = this.#rooms > 1;
    return {
      fails: chanceBehind(this.rates, hits, count, certainty),
      hits,
      count,
      lacking,
      mean: has ? mean + this.#shift : null,
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
  /** For each result of the evaluator, where it lies in so many draws as the intervals are sure. */
  readonly results: readonly { readonly low: number; readonly high: number }[];
}

/** Why a point fails: 1 for want of an answer alone, 2 where something is outside. */
const LACKS = 1;
const FAILS = 2;

/** Counts where one limit fails, and marks those points in `any`. */
function tallied(
  tally: Tally,
  { state, room }: LimitColumns,
  refused: Uint8Array,
  count: number,
  any: Uint8Array,
): void {
  let hits = 0;
  let lacking = 0;
  for (let n = 0; n < count; n++) {
    const isRefused = refused[n] === 1;
    if (!isRefused && !isFailing(state[n])) continue;
    hits++;
    const lacks = isRefused || isLacking(state[n]);
    if (lacks) lacking++;
    const isOutside = !isLacking(state[n]);
    any[n] = (any[n] as number) | (isOutside ? FAILS : LACKS);
  }
  tally.add(count, hits, lacking);
  tally.addRooms(room, count);
}

function talliedTogether(tally: Tally, any: Uint8Array, count: number): void {
  let hits = 0;
  let lacking = 0;
  for (let n = 0; n < count; n++) {
    if (any[n] === 0) continue;
    hits++;
    if (any[n] === LACKS) lacking++;
  }
  tally.add(count, hits, lacking);
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
  const live = new Set(liveFactors(evaluator, model));
  const drawn = order.filter((factor) => live.has(factor));
  meter.expect(repeats * points);
  const tallies = evaluator.limits.map(() => new Tally());
  const together = new Tally();
  // The same columns serve all batches: new ones for each would cost as much as the points themselves.
  const cube = drawn.map(() => new Float64Array(BATCH));
  const chances: Float64Array[] = [];
  for (const [dimension, factor] of drawn.entries()) chances[factor] = cube[dimension] as Float64Array;
  const columns = model.errors.map(() => new Float64Array(BATCH));
  const any = new Uint8Array(BATCH);
  const kept = evaluator.results.map(() => new Float64Array(repeats * points));
  for (let repeat = 0; repeat < repeats; repeat++) {
    const sequence = new SobolSequence(drawn.length, seed * 1000 + repeat);
    for (let from = 0; from < points; from += BATCH) {
      const count = Math.min(BATCH, points - from);
      sequence.next(cube, count);
      const looked = evaluator.evaluateMany(fromChances(model, chances, count, columns), count);
      const { limits, refused } = looked;
      for (const [i, column] of kept.entries()) column.set(looked.results[i] ?? [], repeat * points + from);
      any.fill(0);
      for (const [i, tally] of tallies.entries())
        tallied(tally, limits[i] as LimitColumns, refused, count, any);
      talliedTogether(together, any, count);
      yield meter.did(count);
    }
    for (const tally of [...tallies, together]) tally.endRepeat();
  }
  return {
    limits: tallies.map((it) => it.result(certainty)),
    together: together.result(certainty),
    results: kept.map((it) => middlePart(it, certainty)),
  };
}
