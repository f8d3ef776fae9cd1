import { fillingsWithLongest } from './fillings-with.ts';
import { firstFit } from './first-fit.ts';
import { type Counts, type Filling, sumOfAll, sumOver, without } from './kinds.ts';
import { relax } from './relaxation.ts';
import type { Work } from './work.ts';

/** Fillings of one tube looked at, at the most, before the search owns that it did not look at all. */
const MOST_FILLINGS = 20_000;

/** Why there is no plan: none exists, or the work ran out. */
export type NoPlan = 'none' | 'unsure';

/** What one search leaves for the next about the same tubes and lengths. */
export interface Learnt {
  readonly known: Filling[];
  /** For what was wanted, by its counts: so many tubes are too few. */
  readonly tooFew: Map<string, number>;
}

/**
 * A plan for what is wanted from so many tubes, or that there is none. Tube after tube is filled round the longest
 * piece left, the fillings of the relaxation first, and left again when the relaxation proves the rest too much for the
 * tubes that are left.
 */
export function fillInTurn(
  tube: number,
  sizes: readonly number[],
  wanted: Counts,
  tubes: number,
  { known, tooFew }: Learnt,
  work: Work,
): Filling[] | NoPlan {
  function* fillingsToTry(left: Counts, proposed: readonly Filling[], waste: number): Generator<Filling> {
    yield* proposed;
    const all: Filling[] = [];
    for (const filling of fillingsWithLongest(tube, sizes, left, waste, work)) {
      all.push(filling);
      if (all.length === MOST_FILLINGS || work.isDone) break;
    }
    yield* all.sort((a, b) => sumOver(sizes, b) - sumOver(sizes, a));
  }

  const fill = (left: Counts, tubesLeft: number): Filling[] | NoPlan => {
    const waste = tubesLeft * tube - sumOfAll(sizes, left);
    if (waste < 0) return 'none';
    work.spend(sizes.length);
    const quick = firstFit(tube, sizes, left);
    if (quick.length <= tubesLeft) return quick;
    const key = left.join();
    if ((tooFew.get(key) ?? -1) >= tubesLeft) return 'none';
    if (work.isDone) return 'unsure';
    const relaxed = relax(tube, sizes, left, tubesLeft, known, work);
    let isUnsure = false;
    if (relaxed.atLeast <= tubesLeft) {
      const longest = left.findIndex((count) => count > 0);
      const proposed = relaxed.cover.map((it) => it.filling).filter((filling) => filling[0] === longest);
      let tried = 0;
      for (const filling of fillingsToTry(left, proposed, waste)) {
        const rest = fill(without(left, filling), tubesLeft - 1);
        if (typeof rest !== 'string') return [filling, ...rest];
        tried++;
        if (rest === 'unsure') isUnsure = true;
        if (work.isDone) break;
      }
      if (tried >= MOST_FILLINGS || work.isDone) isUnsure = true;
    }
    if (isUnsure) return 'unsure';
    tooFew.set(key, tubesLeft);
    return 'none';
  };
  return fill(wanted, tubes);
}
