import { describe, expect, it } from 'vitest';
import { NoAnswer } from '../../../src/calc/answer.ts';
import { type CutPlan, cutFromTubes } from '../../../src/calc/cutting/cut.ts';
import { fewestTubes } from '../../../src/calc/cutting/fewest-tubes.ts';
import { firstFit } from '../../../src/calc/cutting/first-fit.ts';
import { kindsOf, piecesByTube } from '../../../src/calc/cutting/kinds.ts';
import { relax } from '../../../src/calc/cutting/relaxation.ts';
import { Work } from '../../../src/calc/cutting/work.ts';
import { fewLengths, type KnownOptimum, manyLengths, triplets } from './known-optima.ts';

const planOf = (pieces: readonly number[], tube: number, kerf = 0): CutPlan => {
  const plan = cutFromTubes(pieces, tube, kerf);
  if (plan instanceof NoAnswer) throw new Error(plan.why);
  return plan;
};

const ascending = (lengths: readonly number[]): number[] => [...lengths].sort((a, b) => a - b);

/** The greatest sum of weights in one tube, load by load: no part of it is shared with the solver. */
function mostIn(
  tube: number,
  sizes: readonly number[],
  wanted: readonly number[],
  weights: readonly number[],
) {
  const most = new Array<number>(tube + 1).fill(0);
  sizes.forEach((size, i) => {
    for (let copy = 0; copy < Math.min(wanted[i] ?? 0, Math.floor(tube / size)); copy++) {
      for (let load = tube; load >= size; load--)
        most[load] = Math.max(most[load] ?? 0, (most[load - size] ?? 0) + (weights[i] ?? 0));
    }
  });
  return most[tube] ?? 0;
}

const everyOne: readonly KnownOptimum[] = [...fewLengths, triplets, ...manyLengths];

describe('published optima of cutting and packing', () => {
  it.each([...fewLengths, triplets].map((it) => [it.name, it] as const))(
    '%s',
    (_, { pieces, tube, tubes }) => {
      const plan = planOf(pieces, tube);
      expect([plan.tubes.length, plan.atLeast]).toEqual([tubes, tubes]);
      expect(ascending(plan.tubes.flat())).toEqual(ascending(pieces));
      for (const cut of plan.tubes) expect(cut.reduce((sum, it) => sum + it, 0)).toBeLessThanOrEqual(tube);
    },
  );

  // Without the search for the longest rest, which takes longer here than the fewest tubes.
  it.each(manyLengths.map((it) => [it.name, it] as const))('%s', (_, { pieces, tube, tubes }) => {
    const kinds = kindsOf(pieces, tube, 0);
    const plan = fewestTubes(kinds, { known: [], tooFew: new Map() }, new Work(1e8));
    expect([plan.tubes.length, plan.atLeast]).toEqual([tubes, tubes]);
    const places = piecesByTube(kinds, plan.tubes);
    expect(ascending(places.flat())).toEqual(pieces.map((_, place) => place));
    for (const cut of places)
      expect(cut.reduce((sum, place) => sum + (pieces[place] ?? 0), 0)).toBeLessThanOrEqual(tube);
  });

  it('with a kerf taken off the pieces and the tube the answers stay', () => {
    // A kerf k is the same question with k added to every piece and to the tube.
    for (const { pieces, tube, tubes } of [...fewLengths, triplets]) {
      const sawn = planOf(
        pieces.map((it) => it - 0.7),
        tube - 0.7,
        0.7,
      );
      expect([sawn.tubes.length, sawn.atLeast]).toEqual([tubes, tubes]);
    }
  });

  it.each([
    [0, 452.25],
    [1, 600.375],
    [2, 72.917],
  ])(
    'the published bound in fractions of tubes lies between proof and cover: question %i, %d',
    (at, bound) => {
      // The same sources give the bound by linear programming beside the optimum, to three decimals at the most.
      const { pieces, tube } = fewLengths[at] as KnownOptimum;
      const kinds = kindsOf(pieces, tube, 0);
      const below = Math.floor(bound);
      const { proof, cover } = relax(kinds.tube, kinds.sizes, kinds.wanted, below, [], new Work(1e8));
      expect(proof.total / proof.most).toBeGreaterThan(below);
      expect(proof.total / proof.most).toBeLessThan(bound + 0.0005);
      expect(cover.reduce((sum, it) => sum + it.amount, 0)).toBeGreaterThan(bound - 0.0005);
    },
  );

  it('proofs hold when the heaviest filling is found another way', () => {
    for (const { pieces, tube, tubes } of everyOne) {
      const { tube: whole, sizes, wanted } = kindsOf(pieces, tube, 0);
      const { proof, atLeast } = relax(whole, sizes, wanted, tubes - 1, [], new Work(1e8));
      expect(mostIn(whole, sizes, wanted, proof.weights)).toBe(proof.most);
      expect(atLeast).toBe(Math.ceil(proof.total / proof.most));
      expect(atLeast).toBeLessThanOrEqual(tubes);
    }
  });

  it('first fit alone needs 23 where 20 do', () => {
    // Public copies of the triplets give 23 for first-fit-decreasing.
    const { tube, sizes, wanted } = kindsOf(triplets.pieces, triplets.tube, 0);
    expect(firstFit(tube, sizes, wanted)).toHaveLength(23);
  });
});
