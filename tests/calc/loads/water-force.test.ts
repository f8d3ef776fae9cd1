import { describe, expect, it } from 'vitest';
import { waterForce } from '../../../src/calc/loads/water-force.ts';

// Densities at 15 °C: ITTC 7.5-02-01-03 Rev 02 (2011), sea water Table 3 and fresh water.
const SEA = 1026.021;
const FRESH = 999.1026;

// Dynamic pressure in Pa from those densities and the knot of 1852/3600 m/s (BIPM SI Brochure, 8th ed., Table 8, from
// memory): closed formula.
const PRESSURES = [
  [1, 135.769812, 132.207793],
  [5, 3394.245305, 3305.194834],
  [6, 4887.713239, 4759.480561],
  [8, 8689.26798, 8461.298776],
  [10, 13576.981219, 13220.779337],
] as const;

describe('the force of flowing water', () => {
  it.each(PRESSURES)('at %d kn is the dynamic pressure on each square metre', (knots, sea, fresh) => {
    expect(Math.abs(waterForce(SEA, knots, 1000, 1000, 1) - sea)).toBeLessThanOrEqual(5e-7 + 1e-8 * sea);
    expect(Math.abs(waterForce(FRESH, knots, 1000, 1000, 1) - fresh)).toBeLessThanOrEqual(
      5e-7 + 1e-8 * fresh,
    );
  });

  it('grows with the square of the speed, and evenly with chord, span, density and coefficient', () => {
    const base = waterForce(SEA, 4, 200, 800, 1.2);
    expect(waterForce(SEA, 8, 200, 800, 1.2)).toBeCloseTo(4 * base, 9);
    expect(waterForce(SEA, 4, 400, 800, 1.2)).toBeCloseTo(2 * base, 9);
    expect(waterForce(SEA, 4, 200, 1600, 1.2)).toBeCloseTo(2 * base, 9);
    expect(waterForce(2 * SEA, 4, 200, 800, 1.2)).toBeCloseTo(2 * base, 9);
    expect(waterForce(SEA, 4, 200, 800, 2.4)).toBeCloseTo(2 * base, 9);
  });
});
