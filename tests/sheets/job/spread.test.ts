import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { spread } from '../../../src/sheets/job/spread.ts';

describe('spread', () => {
  it('leaves alone what has its room', () => {
    expect(spread([10, 40, 80], 20, 0, 100)).toEqual([10, 40, 80]);
  });

  it('moves neighbours apart by the same way each', () => {
    expect(spread([50, 50], 20, 0, 100)).toEqual([40, 60]);
    expect(spread([52, 48, 50], 10, 0, 100)).toEqual([60, 40, 50]);
  });

  it('stays between the ends', () => {
    expect(spread([0, 0, 1], 20, 0, 100)).toEqual([0, 20, 40]);
    expect(spread([99, 100], 20, 0, 100)).toEqual([80, 100]);
  });

  it('gives each a room of its own where they differ', () => {
    // By hand: a wide one between two narrow ones needs (4 + 20)/2 = 12 on either side.
    expect(spread([50, 50, 50], [4, 20, 4], 0, 100)).toEqual([38, 50, 62]);
    expect(spread([0, 5, 90], [4, 20, 4], 0, 100)).toEqual([0, 12, 90]);
  });

  it('gives each its room, in order, or as much as there is', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 100 }), { minLength: 1, maxLength: 8 }), (wanted) => {
        const at = spread(wanted, 15, 0, 100);
        const room = Math.min(15, wanted.length > 1 ? 100 / (wanted.length - 1) : 15);
        const sorted = [...at].sort((a, b) => a - b);
        for (const [i, it] of sorted.entries()) {
          expect(it).toBeGreaterThanOrEqual(-1e-9);
          expect(it).toBeLessThanOrEqual(100 + 1e-9);
          if (i > 0) expect(it - (sorted[i - 1] ?? 0)).toBeGreaterThanOrEqual(room - 1e-9);
        }
        for (const [i, a] of wanted.entries())
          for (const [j, b] of wanted.entries()) if (a < b) expect(at[i] ?? 0).toBeLessThan(at[j] ?? 0);
      }),
    );
  });
});
