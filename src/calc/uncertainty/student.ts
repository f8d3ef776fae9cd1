import { betaBelow } from './beta.ts';
import { normalBelow, normalQuantile } from './normal.ts';

/** Chance that a value of Student's law lies below t; without end of freedom it is the normal law. */
export function studentBelow(t: number, freedom: number): number {
  if (freedom === Number.POSITIVE_INFINITY) return normalBelow(t);
  const tail = betaBelow(freedom / (freedom + t * t), freedom / 2, 0.5) / 2;
  return t < 0 ? tail : 1 - tail;
}

/** The half-width, in standard deviations, of the interval that holds the share given: 0.95 for 95 %. */
export function studentFactor(share: number, freedom: number): number {
  if (freedom === Number.POSITIVE_INFINITY) return normalQuantile((1 + share) / 2);
  const outside = (1 - share) / 2;
  let low = 0;
  let high = 1;
  while (studentBelow(-high, freedom) > outside) high *= 2;
  for (let i = 0; i < 200 && high - low > 1e-15 * high; i++) {
    const middle = (low + high) / 2;
    if (studentBelow(-middle, freedom) > outside) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
