import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { firstFit } from '../../../src/calc/cutting/first-fit.ts';
import { kindsOf } from '../../../src/calc/cutting/kinds.ts';
import { longestRest } from '../../../src/calc/cutting/longest-rest.ts';

describe('the longest rest', () => {
  it('loses no piece when the work runs out', () => {
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
});
