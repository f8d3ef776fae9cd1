import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { heaviestFillings } from '../../../src/calc/cutting/heaviest.ts';
import { isWithin, sumOver } from '../../../src/calc/cutting/kinds.ts';
import { Work } from '../../../src/calc/cutting/work.ts';

describe('the heaviest filling of a tube', () => {
  it('is what trying every set finds, and for each kind none claims more than it holds', () => {
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
            expect(sumOver(weights, filling)).toBe(weight);
            expect(sumOver(sizes, filling)).toBeLessThanOrEqual(tube);
            expect(isWithin(wanted, filling)).toBe(true);
          }
        },
      ),
      { numRuns: 300 },
    );
  });
});
