import { describe, expect, it } from 'vitest';
import { packingFactor } from '../../../src/calc/fasteners/packing-factor.ts';

describe('EN 1993-1-8:2005, 3.6.1(12): shear through packing', () => {
  // The clause's 9d/(8d + 3t), by hand in whole fractions of d: t = d/3 gives 9/9, d gives 9/11, 4d/3 gives 9/12.
  it.each([6, 8, 10, 12])('M%d', (d) => {
    expect(packingFactor(d, 0)).toBe(1);
    expect(packingFactor(d, d / 4)).toBe(1);
    expect(packingFactor(d, d / 3)).toBe(1);
    expect(packingFactor(d, d / 2)).toBeCloseTo(18 / 19, 12);
    expect(packingFactor(d, d)).toBeCloseTo(9 / 11, 12);
    expect(packingFactor(d, (4 * d) / 3)).toBeCloseTo(3 / 4, 12);
    expect(packingFactor(d, 4 * d)).toBeCloseTo(9 / 20, 12);
  });

  it('never rises with the packing, and does not jump at a third of the diameter', () => {
    for (let t = 0; t < 100; t += 0.5)
      expect(packingFactor(12, t + 0.5)).toBeLessThanOrEqual(packingFactor(12, t));
    expect(packingFactor(12, 4 + 1e-9)).toBeCloseTo(1, 9);
  });
});
