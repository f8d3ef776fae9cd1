import type { Estimate } from '../../src/calc/uncertainty/interval.ts';
import type { SoakLine } from './part.ts';

/** Seeds every case is run with, and the certainty of its intervals. */
export const SEEDS = 200;
export const CERTAINTY = 0.99;
/**
 * Most of 200 intervals at 99 % that may miss: were their coverage right, more than 7 would miss in fewer than one
 * long run in 900 (binomial law).
 */
const MOST_MISSES = 7;

/** Counts over all seeds how often an interval misses a truth that is known to so much either way. */
export function coverage(name: string, truth: number, found: readonly Estimate[], within = 0): SoakLine {
  const missed = found.filter(({ low, high }) => !(low - within <= truth && truth <= high + within)).length;
  const width = found.reduce((sum, it) => sum + (it.high - it.low), 0) / found.length;
  const mean = found.reduce((sum, it) => sum + it.value, 0) / found.length;
  return {
    name,
    says: `${found.length - missed} of ${found.length} intervals hold ${truth}; mean ${mean.toPrecision(6)}, width ${width.toPrecision(3)}`,
    ok: missed <= MOST_MISSES,
  };
}

export const seeds: readonly number[] = Array.from({ length: SEEDS }, (_, i) => i + 1);
