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
  const quick = firstFit(tube, sizes, wanted);
  let atLeast = Math.ceil(sumOfAll(sizes, wanted) / tube);
  while (atLeast < quick.length && !work.isDone) {
    const proven = relax(tube, sizes, wanted, atLeast, learnt.known, work).atLeast;
    if (proven <= atLeast) break;
    atLeast = proven;
  }
  let isProven = true;
  for (let tubes = atLeast; tubes < quick.length; tubes++) {
    const found = fillInTurn(tube, sizes, wanted, tubes, learnt, work);
    if (typeof found !== 'string') return { tubes: found, atLeast };
    if (found === 'unsure') isProven = false;
    else if (isProven) atLeast = tubes + 1;
  }
  return { tubes: quick, atLeast };
}
