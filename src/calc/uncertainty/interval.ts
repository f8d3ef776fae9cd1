import { betaQuantile } from './beta.ts';
import { studentFactor } from './student.ts';

/** A number that was estimated, and where it lies at the share of certainty asked for. */
export interface Estimate {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** The chance behind `hits` of `count` independent trials: the exact interval of Clopper and Pearson, 1934. */
export function chanceOf(hits: number, count: number, share: number): Estimate {
  const outside = (1 - share) / 2;
  return {
    value: hits / count,
    low: hits === 0 ? 0 : betaQuantile(outside, hits, count - hits + 1),
    high: hits === count ? 1 : betaQuantile(1 - outside, hits + 1, count - hits),
  };
}

/** The mean behind independent repeats, by Student's law. At least two repeats. */
export function meanOf(repeats: ArrayLike<number>, share: number): Estimate {
  const count = repeats.length;
  let sum = 0;
  for (let i = 0; i < count; i++) sum += repeats[i] ?? 0;
  const mean = sum / count;
  let squares = 0;
  for (let i = 0; i < count; i++) squares += ((repeats[i] ?? 0) - mean) ** 2;
  const half = studentFactor(share, count - 1) * Math.sqrt(squares / (count * (count - 1)));
  return { value: mean, low: mean - half, high: mean + half };
}

/**
 * A ratio of two sums over independent repeats, by leaving each out in turn (the jackknife of Quenouille and Tukey):
 * its bias is taken off, its interval is Student's.
 */
export function ratioOf(above: ArrayLike<number>, below: ArrayLike<number>, share: number): Estimate {
  const count = above.length;
  let over = 0;
  let under = 0;
  for (let i = 0; i < count; i++) {
    over += above[i] ?? 0;
    under += below[i] ?? 0;
  }
  const whole = over / under;
  const parts = Float64Array.from(
    { length: count },
    (_, i) => count * whole - ((count - 1) * (over - (above[i] ?? 0))) / (under - (below[i] ?? 0)),
  );
  return meanOf(parts, share);
}
