import { describe, expect, it } from 'vitest';
import { NoAnswer } from '../../../src/calc/answer.ts';
import { plateReach, plateShare, skinShare } from '../../../src/calc/fasteners/plate.ts';

describe('the spread under a backing plate', () => {
  // EN 1993-1-8:2005, 6.2.5(4): c = t·√(fy/(3·fjd·γM0)), by hand with whole roots and γM0 = 1.
  it.each([
    [10, 300, 1, 100],
    [8, 270, 10, 24],
    [6, 48, 4, 12],
    [0, 205, 10, 0],
  ])('a plate of %d mm, yield %d on %d MPa, reaches %d mm', (thickness, yieldStress, bears, reach) => {
    expect(plateReach(thickness, yieldStress, bears)).toBeCloseTo(reach, 12);
  });

  it('is a ring round the ISO 7089 washer, held to the plate’s own area', () => {
    // M10: washer 20 mm; with reach 24 the ring is 68 mm across.
    const ring = (Math.PI / 4) * (68 ** 2 - 10 ** 2);
    expect(plateShare(ring * 10, 10, 8, 270, 10, 1e6, 500)).toBeCloseTo(1, 12);
    expect(plateShare(1000 * 10, 10, 8, 270, 10, 1000, 500)).toBeCloseTo(1, 12);
  });

  it('shears the skin round its circumference', () => {
    expect(skinShare(Math.PI * 68 * 5 * 4, 10, 8, 270, 10, 5, 4, 1e6, 500)).toBeCloseTo(1, 12);
    // A plate narrower than its bolt's spread lets the skin go at its own edge.
    const narrow = (Math.PI / 4) * (40 ** 2 - 10 ** 2);
    expect(skinShare(Math.PI * 40 * 5 * 4, 10, 8, 270, 10, 5, 4, narrow, 500)).toBeCloseTo(1, 12);
  });

  it('does not count what two neighbours share twice', () => {
    const ring = (Math.PI / 4) * (50 ** 2 - 10 ** 2);
    expect(plateShare(ring * 10, 10, 8, 270, 10, 1e6, 50)).toBeCloseTo(1, 12);
    expect(skinShare(Math.PI * 50 * 5 * 4, 10, 8, 270, 10, 5, 4, 1e6, 50)).toBeCloseTo(1, 12);
    expect(plateShare(1, 10, 8, 270, 10, 1e6, 10)).toBeInstanceOf(NoAnswer);
  });
});
