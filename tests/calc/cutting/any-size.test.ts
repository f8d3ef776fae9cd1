import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { NoAnswer } from '../../../src/calc/answer.ts';
import { type CutPlan, cutFromTubes } from '../../../src/calc/cutting/cut.ts';
import { fewestTubes } from '../../../src/calc/cutting/fewest-tubes.ts';
import { firstFit } from '../../../src/calc/cutting/first-fit.ts';
import { heaviestFillings } from '../../../src/calc/cutting/heaviest.ts';
import { isWithin, kindsOf } from '../../../src/calc/cutting/kinds.ts';
import { longestRest } from '../../../src/calc/cutting/longest-rest.ts';
import { Work } from '../../../src/calc/cutting/work.ts';
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

  it('finds the heaviest filling of a tube, as trying every set does', () => {
    const kind = fc.record({
      size: fc.integer({ min: 3, max: 40 }),
      wanted: fc.integer({ min: 0, max: 3 }),
      weight: fc.integer({ min: 0, max: 50 }),
    });
    fc.assert(
      fc.property(
        fc.uniqueArray(kind, { minLength: 1, maxLength: 5, selector: (it) => it.size }),
        fc.integer({ min: 10, max: 90 }),
        (kinds, tube) => {
          const heaviest = (i: number, rest: number): number => {
            const it = kinds[i];
            if (it === undefined) return 0;
            const counts = Array.from({ length: it.wanted + 1 }, (_, count) => count);
            return Math.max(
              ...counts
                .filter((count) => count * it.size <= rest)
                .map((count) => count * it.weight + heaviest(i + 1, rest - count * it.size)),
            );
          };
          const [sizes, wanted, weights] = [
            kinds.map((it) => it.size),
            kinds.map((it) => it.wanted),
            kinds.map((it) => it.weight),
          ];
          const found = heaviestFillings(tube, sizes, wanted, weights, new Work(1e6));
          expect(found.weight).toBe(heaviest(0, tube));
          expect(Math.max(0, ...found.fillings.map((it) => it.weight))).toBe(found.weight);
          for (const { filling, weight } of found.fillings) {
            expect(sum(filling.map((at) => weights[at] ?? 0))).toBe(weight);
            expect(sum(filling.map((at) => sizes[at] ?? 0))).toBeLessThanOrEqual(tube);
            expect(isWithin(wanted, filling)).toBe(true);
          }
        },
      ),
      { numRuns: 300 },
    );
  });

  it('says what is proven when the work runs out, and no more', () => {
    const kinds = kindsOf(triplets.pieces, triplets.tube, 0);
    const hurried = fewestTubes(kinds, { known: [], tooFew: new Map() }, new Work(1));
    expect(hurried.tubes.length).toBeGreaterThan(triplets.tubes);
    expect(hurried.atLeast).toBeLessThanOrEqual(triplets.tubes);
    expect(hurried.tubes.flat()).toHaveLength(60);
  });

  it('loses no piece when the work for the longest rest runs out', () => {
    const many = fc.array(fc.integer({ min: 10, max: 240 }), { minLength: 30, maxLength: 60 });
    fc.assert(
      fc.property(many, (pieces) => {
        const kinds = kindsOf(pieces, 800, 2);
        const learnt = { known: [], tooFew: new Map<string, number>() };
        const quick = firstFit(kinds.tube, kinds.sizes, kinds.wanted);
        const { tubes } = longestRest(kinds, quick, learnt, 3e5);
        expect(tubes.length).toBe(quick.length);
        const cut = kinds.sizes.map((_, kind) => tubes.flat().filter((it) => it === kind).length);
        expect(cut).toEqual(kinds.wanted);
      }),
      { numRuns: 40 },
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
