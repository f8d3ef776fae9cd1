import { describe, expect, it } from 'vitest';
import { slamForce } from '../../../src/calc/loads/slam-force.ts';
import { waterForce } from '../../../src/calc/loads/water-force.ts';

describe('a sea that strikes a tube', () => {
  it('pushes with 5.15 times the dynamic pressure on its breadth (DNV-RP-C205, from memory)', () => {
    // By hand: ½·1025·5.15·0.0603·25 = 3978.9.
    expect(slamForce(1025, 60.3, 5)).toBeCloseTo(3978.86, 1);
    // A metre of the tube as a blade, at the same speed in knots.
    const knots = 5 / (1852 / 3600);
    expect(slamForce(1025, 60.3, 5)).toBeCloseTo(waterForce(1025, knots, 60.3, 1000, 5.15), 6);
  });
});
