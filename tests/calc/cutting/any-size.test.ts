import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { NoAnswer } from '../../../src/calc/answer.ts';
import { type CutPlan, cutFromTubes } from '../../../src/calc/cutting/cut.ts';
import { byMasks } from './by-masks.ts';
import { triplets } from './known-optima.ts';

const planOf = (pieces: readonly number[], supply: number, kerf: number): CutPlan => {
  const plan = cutFromTubes(pieces, supply, kerf);
  if (plan instanceof NoAnswer) throw new Error(plan.why);
  return plan;
};

const sum = (lengths: readonly number[]): number => lengths.reduce((all, it) => all + it, 0);

/** First fit, longest first, over the pieces one by one. */
function byFirstFit(pieces: readonly number[], supply: number, kerf: number): number {
  const rests: number[] = [];
  for (const piece of [...pieces].sort((a, b) => b - a)) {
    const at = rests.findIndex((rest) => rest >= piece + kerf);
    if (at < 0) rests.push(supply - piece);
    else rests[at] = (rests[at] as number) - piece - kerf;
  }
  return rests.length;
}

/** Whole lengths; `most` pieces at the most, none longer than a share of the tube. */
const question = (most: number, share: number) =>
  fc.record({
    supply: fc.integer({ min: 60, max: 160 }),
    kerf: fc.integer({ min: 0, max: 3 }),
    shares: fc.array(fc.integer({ min: 5, max: share }), { minLength: 3, maxLength: most }),
  });

const piecesOf = ({ supply, shares }: { supply: number; shares: readonly number[] }): number[] =>
  shares.map((it) => Math.max(1, Math.floor((supply * it) / 100)));

describe('cutting any number of pieces', () => {
  it('takes as few tubes, and leaves as long a piece, as a search over every order', () => {
    fc.assert(
      fc.property(question(11, 70), (given) => {
        const { supply, kerf } = given;
        const pieces = piecesOf(given);
        const plan = planOf(pieces, supply, kerf);
        const truth = byMasks(
          pieces.map((it) => it + kerf),
          supply + kerf,
        );
        expect([plan.tubes.length, plan.atLeast]).toEqual([truth.tubes, truth.tubes]);
        expect(plan.isLeftLongest).toBe(true);
        expect(Math.max(...plan.left)).toBe(Math.max(0, supply - truth.lightest));
      }),
      { numRuns: 300 },
    );
  });

  it('cuts every piece once, keeps within each tube, and never needs more than first fit', () => {
    fc.assert(
      fc.property(question(40, 60), fc.constantFrom(1, 0.1, 0.001), (given, unit) => {
        const { supply, kerf } = given;
        const pieces = piecesOf(given);
        const plan = planOf(
          pieces.map((it) => it * unit),
          supply * unit,
          kerf * unit,
        );
        const cut = plan.tubes.map((tube) => tube.map((it) => Math.round(it / unit)));
        expect(cut.flat().sort((a, b) => a - b)).toEqual([...pieces].sort((a, b) => a - b));
        for (const tube of cut) expect(sum(tube) + kerf * (tube.length - 1)).toBeLessThanOrEqual(supply);
        const least = Math.ceil((sum(pieces) + kerf * pieces.length) / (supply + kerf));
        expect(plan.atLeast).toBeGreaterThanOrEqual(least);
        expect(plan.tubes.length).toBeGreaterThanOrEqual(plan.atLeast);
        expect(plan.tubes.length).toBeLessThanOrEqual(byFirstFit(pieces, supply, kerf));
      }),
      { numRuns: 60 },
    );
  });

  it('answers the same question the same way', () => {
    const first = planOf(triplets.pieces, triplets.tube, 0);
    const turned = planOf([...triplets.pieces].reverse(), triplets.tube, 0);
    expect(turned).toEqual(first);
  });

  it('counts decimals as written, with no gap and no room from their last bits', () => {
    // 0.1 + 0.2 is more than 0.3 in floats. By hand: three of 0.1 mm fill 0.3 mm, and 266.6 · 3 + 2 · 0.1 is 800.
    expect(planOf([0.1, 0.2, 0.1, 0.2], 0.3, 0).tubes).toHaveLength(2);
    expect(planOf([266.6, 266.6, 266.6], 800, 0.1).tubes).toHaveLength(1);
    expect(planOf([266.6, 266.6, 266.601], 800, 0.1).tubes).toHaveLength(2);
  });

  it('cuts pieces as long as the tube, to the last bit, from one each; and no piece from no tube', () => {
    const odd = 205.18232199451;
    const plan = planOf([odd, odd, 100], odd, 2);
    expect(plan.tubes).toEqual([[odd], [odd], [100]]);
    expect(plan.left).toEqual([0, 0, odd - 102]);
    expect(planOf([], 800, 2).tubes).toEqual([]);
  });
});
