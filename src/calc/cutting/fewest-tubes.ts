import { fillInTurn, type Learnt } from './fill-in-turn.ts';
import { firstFit } from './first-fit.ts';
import { type Filling, type Kinds, sumOfAll } from './kinds.ts';
import { relax } from './relaxation.ts';
import type { Work } from './work.ts';

export interface FewestTubes {
  readonly tubes: readonly Filling[];
  /** Tubes that any plan needs, proven; fewer than the plan's only where the work ran out. */
  readonly atLeast: number;
}

/** The plan with the fewest tubes, and how many are proven to be needed. */
export function fewestTubes(kinds: Kinds, learnt: Learnt, work: Work): FewestTubes {
  const { tube, sizes, wanted } = kinds;
  let tubes: readonly Filling[] = firstFit(tube, sizes, wanted);
  let atLeast = Math.ceil(sumOfAll(sizes, wanted) / tube);
  while (atLeast < tubes.length && !work.isDone) {
    const proven = relax(tube, sizes, wanted, atLeast, learnt.known, work).atLeast;
    if (proven <= atLeast) break;
    atLeast = proven;
  }
  while (atLeast < tubes.length) {
    const { plan, isNone } = fillInTurn(tube, sizes, wanted, atLeast, learnt, work);
    if (plan.length < tubes.length) tubes = plan;
    if (!isNone) break;
    atLeast++;
  }
  return { tubes, atLeast };
}
