import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { finish } from '../../src/studies/study.ts';
import { sweep } from '../../src/studies/sweep.ts';
import { plainEvaluator } from './plain-evaluator.ts';

const POINTS = 41;
const RANGE = 100;
const SPACING = RANGE / (POINTS - 1);
/** How densely the sign is sampled beside it. */
const DENSE = 20_000;

/** Roots further apart than the points are, so that no two hide between neighbours. */
const roots = fc
  .array(fc.double({ min: 1, max: RANGE - 1, noNaN: true }), { maxLength: 8 })
  .map((all) =>
    [...all]
      .sort((a, b) => a - b)
      .filter((it, i, sorted) => i === 0 || it - (sorted[i - 1] as number) > 2.5 * SPACING),
  );

/** A polynomial with simple roots, bent so that it is no straight line at any of them. */
const polynomial =
  (zeros: readonly number[], sign: 1 | -1) =>
  (x: number): number =>
    zeros.reduce((product, zero) => product * ((x - zero) / 10), sign) * (1 + Math.abs(Math.sin(x / 7)));

function signChanges(of: (x: number) => number): number {
  let changes = 0;
  let before = of(0) < 0;
  for (let i = 1; i <= DENSE; i++) {
    const now = of((RANGE * i) / DENSE) < 0;
    if (now !== before) changes++;
    before = now;
  }
  return changes;
}

const crossings = (of: (x: number) => number, present: number | null) =>
  finish(
    sweep(plainEvaluator({ x: 0 }, [{ name: 'y', of: (input) => of(input('x')), low: 0 }]), {
      input: 'x',
      low: 0,
      high: RANGE,
      present,
      whole: false,
      points: POINTS,
      results: [],
    }),
  ).turnings;

describe('crossings', () => {
  it('are as many as a dense sampling has changes of sign, each where the function is nought', () => {
    fc.assert(
      fc.property(
        roots,
        fc.constantFrom<(1 | -1)[]>(1, -1),
        fc.option(fc.double({ min: 0, max: RANGE, noNaN: true })),
        (zeros, sign, present) => {
          const of = polynomial(zeros, sign);
          const found = crossings(of, present);
          expect(found).toHaveLength(signChanges(of));
          for (const [i, { at, below, above }] of found.entries()) {
            expect(above - below).toBeLessThanOrEqual(1e-6 * RANGE);
            expect(Math.abs(at - (zeros[i] as number))).toBeLessThanOrEqual(1e-6 * RANGE);
            expect(of(at)).toBeGreaterThanOrEqual(0);
          }
        },
      ),
      { numRuns: 300 },
    );
  });

  it('of a dip or a peak come in pairs, however narrow it is', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 10, max: 90, noNaN: true }),
        fc.double({ min: 0.02, max: 0.9, noNaN: true }),
        fc.constantFrom<(1 | -1)[]>(1, -1),
        (middle, share, sign) => {
          const half = share * SPACING;
          const found = crossings((x) => sign * (Math.abs(x - middle) - half), null);
          expect(found).toHaveLength(2);
          expect(found[0]?.at).toBeCloseTo(middle - half, 3);
          expect(found[1]?.at).toBeCloseTo(middle + half, 3);
        },
      ),
      { numRuns: 300 },
    );
  });

  it('of a step are where the step is', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 99, noNaN: true }), (edge) => {
        const found = crossings((x) => (x < edge ? -1 : 1), null);
        expect(found).toHaveLength(1);
        expect(Math.abs((found[0]?.at ?? 0) - edge)).toBeLessThanOrEqual(1e-6 * RANGE);
      }),
    );
  });
});
