import { fillingsWithLongest } from './fillings-with.ts';
import { firstFit } from './first-fit.ts';
import { type Counts, loadOf } from './kinds.ts';
import { relax } from './relaxation.ts';
import type { Work } from './work.ts';

/** Fillings of one tube looked at, at the most, before the search owns that it did not look at all. */
const MOST_FILLINGS = 20_000;

/** Why there is no plan: none exists, or the work ran out. */
export type NoPlan = 'none' | 'unsure';

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
  known: Counts[],
  work: Work,
): Counts[] | NoPlan {
  const failed = new Map<string, number>();

  const fill = (left: Counts, tubesLeft: number): Counts[] | NoPlan => {
    const load = loadOf(sizes, left);
    const waste = tubesLeft * tube - load;
    if (waste < 0) return 'none';
    const quick = firstFit(tube, sizes, left);
    if (quick.length <= tubesLeft) return quick;
    const key = left.join();
    if ((failed.get(key) ?? -1) >= tubesLeft) return 'none';
    if (work.isDone) return 'unsure';
    const kinds = left.flatMap((count, i) => (count > 0 ? [i] : []));
    const few = <T>(all: readonly T[]): T[] => kinds.map((i) => all[i] as T);
    const back = (counts: Counts): number[] => {
      const all = sizes.map(() => 0);
      kinds.forEach((i, k) => {
        all[i] = counts[k] as number;
      });
      return all;
    };
    const pool = known.filter((counts) => counts.every((count, i) => count <= (left[i] as number))).map(few);
    const before = pool.length;
    const relaxed = relax(tube, few(sizes), few(left), tubesLeft, pool, work);
    for (const counts of pool.slice(before)) known.push(back(counts));
    if (relaxed.atLeast > tubesLeft) {
      failed.set(key, tubesLeft);
      return 'none';
    }
    const proposed = relaxed.fillings.filter(({ counts }) => (counts[0] ?? 0) > 0).map((it) => it.counts);
    const all = fillingsWithLongest(tube, few(sizes), few(left), waste, MOST_FILLINGS);
    const byLoad = all
      .map((counts) => ({ counts, load: loadOf(few(sizes), counts) }))
      .sort((a, b) => b.load - a.load)
      .map((it) => it.counts);
    let isUnsure = all.length >= MOST_FILLINGS;
    for (const counts of [...proposed, ...byLoad]) {
      const filling = back(counts);
      const rest = fill(
        left.map((count, i) => count - (filling[i] as number)),
        tubesLeft - 1,
      );
      if (typeof rest !== 'string') return [filling, ...rest];
      if (rest === 'unsure') {
        isUnsure = true;
        if (work.isDone) break;
      }
    }
    if (isUnsure) return 'unsure';
    failed.set(key, tubesLeft);
    return 'none';
  };
  return fill(wanted, tubes);
}
