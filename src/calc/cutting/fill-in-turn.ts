import { fillingsWithLongest } from './fillings-with.ts';
import { firstFit } from './first-fit.ts';
import { type Counts, type Filling, sumOfAll, sumOver, without } from './kinds.ts';
import { relax } from './relaxation.ts';
import { roundedCover } from './rounded-cover.ts';
import type { Work } from './work.ts';

/** Fillings of one tube looked at, at the most, before the search owns that it did not look at all. */
const MOST_FILLINGS = 20_000;

export interface Search {
  /** The plan with the fewest tubes that the search came by: found when it needs no more than were asked for. */
  readonly plan: readonly Filling[];
  /** Whether it is proven that so few tubes will not do. */
  readonly isNone: boolean;
}

/** What one search leaves for the next about the same tubes and lengths. */
export interface Learnt {
  readonly known: Filling[];
  /** For what was wanted, by its counts: so many tubes are too few. */
  readonly tooFew: Map<string, number>;
}

/**
 * Looks for a plan for what is wanted from so many tubes. Tube after tube is filled round the longest piece left, the
 * fillings of the relaxation first, and left again when the relaxation proves the rest too much for the tubes that are
 * left.
 */
export function fillInTurn(
  tube: number,
  sizes: readonly number[],
  wanted: Counts,
  tubes: number,
  { known, tooFew }: Learnt,
  work: Work,
): Search {
  const filled: Filling[] = [];
  let plan: readonly Filling[] = firstFit(tube, sizes, wanted);

  function* fillingsToTry(left: Counts, proposed: readonly Filling[], waste: number): Generator<Filling> {
    yield* proposed;
    const all: Filling[] = [];
    for (const filling of fillingsWithLongest(tube, sizes, left, waste, work)) {
      all.push(filling);
      if (all.length === MOST_FILLINGS || work.isDone) break;
    }
    yield* all.sort((a, b) => sumOver(sizes, b) - sumOver(sizes, a));
  }

  const note = (rest: readonly Filling[]): void => {
    if (filled.length + rest.length < plan.length) plan = [...filled, ...rest];
  };

  /** Whether it is proven that the tubes left are too few for the pieces left; ends early once a plan is found. */
  const areTooFew = (left: Counts): boolean => {
    const tubesLeft = tubes - filled.length;
    const waste = tubesLeft * tube - sumOfAll(sizes, left);
    if (waste < 0) return true;
    const key = left.join();
    if ((tooFew.get(key) ?? -1) >= tubesLeft) return true;
    work.spend(sizes.length);
    note(firstFit(tube, sizes, left));
    if (plan.length <= tubes || work.isDone) return false;
    const relaxed = relax(tube, sizes, left, tubesLeft, known, work);
    if (relaxed.atLeast <= tubesLeft) {
      note(roundedCover(tube, sizes, left, relaxed.cover));
      if (plan.length <= tubes) return false;
      const longest = left.findIndex((count) => count > 0);
      const proposed = relaxed.cover.map((it) => it.filling).filter((filling) => filling[0] === longest);
      let [tried, failed] = [0, 0];
      for (const filling of fillingsToTry(left, proposed, waste)) {
        filled.push(filling);
        if (areTooFew(without(left, filling))) failed++;
        filled.pop();
        tried++;
        if (plan.length <= tubes || work.isDone) return false;
      }
      if (failed < tried || tried >= MOST_FILLINGS || work.isDone) return false;
    }
    tooFew.set(key, tubesLeft);
    return true;
  };
  const isNone = plan.length > tubes && areTooFew(wanted);
  return { plan, isNone };
}
