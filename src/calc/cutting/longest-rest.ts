import { exactSums } from './exact-sums.ts';
import { fillInTurn, type Learnt } from './fill-in-turn.ts';
import { type Filling, type Kinds, sumOfAll, sumOver, without } from './kinds.ts';
import { Work } from './work.ts';

export interface RestPlan {
  readonly tubes: readonly Filling[];
  /** Whether it is proven that no plan with as many tubes leaves a longer piece. */
  readonly isLongest: boolean;
}

/** Choices for the lightest tube that may each take their share of the work before it runs out. */
const CHOICES = 6;

/** After a choice of which nothing could be said, a sum greater by this share of a tube is tried, then by twice that. */
const FIRST_LEAP = 1 / 100;

/**
 * Of the plans with as many tubes as the one given, one that leaves the longest piece. One tube is filled as little as
 * can be: its contents are tried from the least sum on that the other tubes leave over, until the others hold the rest.
 * The greater the sum, the easier the others' part; so where the work gives out at one sum, a greater one is tried, and
 * nothing is claimed to be the longest.
 */
export function longestRest(
  { tube, sizes, wanted }: Kinds,
  plan: readonly Filling[],
  learnt: Learnt,
  steps: number,
): RestPlan {
  const others = plan.length - 1;
  const lightest = Math.min(...plan.map((filling) => sumOver(sizes, filling)));
  const least = Math.max(1, sumOfAll(sizes, wanted) - others * tube);
  if (lightest <= least) return { tubes: plan, isLongest: true };
  const all = exactSums(sizes, wanted, lightest - 1);
  if (all === undefined) return { tubes: plan, isLongest: false };
  const work = new Work(steps);
  let [from, leap] = [least, tube * FIRST_LEAP];
  let isProven = true;
  for (const sum of all.sums) {
    if (sum < from) continue;
    for (const filling of all.choices(sum)) {
      if (work.isDone) return { tubes: plan, isLongest: false };
      const share = new Work(steps / CHOICES);
      const rest = fillInTurn(tube, sizes, without(wanted, filling), others, learnt, share);
      if (rest.plan.length <= others) return { tubes: [filling, ...rest.plan], isLongest: isProven };
      work.spend(share.spent);
      if (rest.isNone) continue;
      isProven = false;
      [from, leap] = [sum + leap, 2 * leap];
      break;
    }
  }
  return { tubes: plan, isLongest: isProven };
}
