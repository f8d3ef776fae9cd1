import type { ErrorModel } from '../uncertain/error-model.ts';
import type { Sampled } from './ask.ts';
import type { FirstOrder } from './first-order.ts';
import type { Worst } from './worst-case.ts';

/** Chances below this are told as they were found about their design points. */
export const SMALL = 1e-3;

/**
 * Sampled chances below this are looked for there. Were it the same, a chance near it would be told by whichever of
 * the two came out high.
 */
export const SEARCHED = 2 * SMALL;
/** Deviations of room, to first order, beyond which a survey's fit alone is not looked for further. */
const FAR = 6;

/**
 * Whether a limit may fail beyond its worst case for reasons worth the search: a reading that reaches it has an error
 * without end. That of a survey's fit ends nowhere either, but far out it only says how few rows there are.
 */
export function isOpen(
  { errors, factors }: ErrorModel,
  reached: readonly number[],
  first: FirstOrder | null,
): boolean {
  const open = reached
    .flatMap((factor) => factors[factor]?.moves ?? [])
    .flatMap((i) => errors[i] ?? [])
    .filter((it) => it.law !== 'rectangular');
  return first !== null && open.every((it) => it.fit !== undefined)
    ? open.length > 0 && first.room < FAR * first.deviation
    : open.length > 0;
}

/** Whether a limit's chance of failing is small and yet not nothing, so that it is worth the search. */
export function isSearched(
  holds: boolean,
  worst: Worst | undefined,
  found: Sampled | undefined,
  open: boolean,
) {
  if (!holds || found === undefined || found.fails.value >= SEARCHED) return false;
  return found.hits > 0 || worst?.fails === true || open;
}
