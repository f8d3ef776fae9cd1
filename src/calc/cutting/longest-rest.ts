import { exactSums } from './exact-sums.ts';
import { fillInTurn } from './fill-in-turn.ts';
import { type Counts, type Kinds, loadOf } from './kinds.ts';
import type { Work } from './work.ts';

export interface RestPlan {
  readonly tubes: readonly Counts[];
  /** Whether it is proven that no plan with as many tubes leaves a longer piece. */
  readonly isLongest: boolean;
}

/**
 * Of the plans with as many tubes as the one given, one that leaves the longest piece. One tube is filled as little as
 * can be: its contents are tried from the least sum on that the other tubes leave over, until the others hold the rest.
 */
export function longestRest(
  { tube, sizes, wanted }: Kinds,
  plan: readonly Counts[],
  known: Counts[],
  work: Work,
): RestPlan {
  const others = plan.length - 1;
  const lightest = Math.min(...plan.map((counts) => loadOf(sizes, counts)));
  const least = loadOf(sizes, wanted) - others * tube;
  if (lightest <= least) return { tubes: plan, isLongest: true };
  const all = exactSums(sizes, wanted, lightest - 1);
  if (all === undefined) return { tubes: plan, isLongest: false };
  let isProven = true;
  for (const sum of all.sums) {
    if (sum < least || sum === 0) continue;
    for (const counts of all.choices(sum)) {
      const left = wanted.map((count, i) => count - (counts[i] as number));
      const rest = fillInTurn(tube, sizes, left, others, known, work);
      if (typeof rest !== 'string') return { tubes: [counts, ...rest], isLongest: isProven };
      if (rest === 'unsure') isProven = false;
      if (work.isDone) return { tubes: plan, isLongest: false };
    }
  }
  return { tubes: plan, isLongest: isProven };
}
