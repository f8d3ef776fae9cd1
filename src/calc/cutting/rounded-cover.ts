import { firstFit } from './first-fit.ts';
import { type Counts, type Filling, isWithin, without } from './kinds.ts';
import type { Relaxation } from './relaxation.ts';

/** A plan from a cover in fractions of tubes: its fillings as whole tubes, most used first, and first fit for the rest. */
export function roundedCover(
  tube: number,
  sizes: readonly number[],
  wanted: Counts,
  cover: Relaxation['cover'],
): Filling[] {
  const plan: Filling[] = [];
  let left = wanted;
  for (const { filling, amount } of cover) {
    for (let count = 0; count < Math.ceil(amount) && isWithin(left, filling); count++) {
      plan.push(filling);
      left = without(left, filling);
    }
  }
  return [...plan, ...firstFit(tube, sizes, left)];
}
