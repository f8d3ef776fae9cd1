import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { airClear } from '../../../src/calc/survey/air-clear.ts';
import { flangeClear, holesBorder, holesClear, platesClear } from '../../../src/calc/survey/keep-out.ts';

const EXHAUST = [150, 250, 300, 400];

describe('keep-outs', () => {
  it.each([
    ['beside it', 0, 350, 90],
    ['corner to corner', 90 - 30, 210, 50],
    ['touching', 90, 350, 0],
    ['reaching 20 into it', 110, 350, -20],
  ])('%s', (_, y, z, wanted) => {
    expect(flangeClear(y, z, 100, 120, [EXHAUST])).toBeCloseTo(wanted, 9);
  });

  it('takes the edges either way round, and the nearest of several', () => {
    const rows = [
      [250, 150, 400, 300],
      [900, 1000, 300, 400],
    ];
    expect(flangeClear(0, 350, 100, 120, rows)).toBeCloseTo(90, 9);
  });

  it('measures holes from their edge', () => {
    // The starboard hole stands at 70: 80 from the exhaust, less 6.
    expect(holesClear(0, 350, 140, 2, 140, 12, [EXHAUST])).toBeCloseTo(74, 9);
    // Four holes in a flange 120 high stand 30 above and below its middle.
    expect(holesClear(200, 230, 0, 4, 120, 12, [EXHAUST])).toBeCloseTo(300 - 260 - 6, 9);
    expect(holesBorder(0, 100, 140, 2, 140, 12, 40, 900, 400)).toBeCloseTo(54, 9);
  });
});

describe('backing plates', () => {
  const rows = [[150, 250, 300, 400]];

  it('keep clear as squares round the holes', () => {
    // Plates of 60 × 60 about holes at ±70: the starboard one ends at 100, 50 from the edge at 150.
    expect(platesClear(0, 350, 140, 2, 140, 3600, rows)).toBeCloseTo(50, 9);
    expect(platesClear(60, 350, 140, 2, 140, 3600, rows)).toBeCloseTo(-10, 9);
  });

  it('are one plate where they overlap, as a flange of that outline is', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -600, max: 600, noNaN: true }),
        fc.double({ min: 0, max: 900, noNaN: true }),
        (y, z) => {
          const [side, spacing] = [122, 80];
          const plates = platesClear(y, z, spacing, 2, 140, side * side, rows) as number;
          const whole = flangeClear(y, z, side, spacing + side, rows) as number;
          expect(Math.max(plates, 0)).toBeCloseTo(Math.max(whole, 0), 9);
          expect(plates < 0).toBe(whole < 0);
        },
      ),
    );
  });
});

describe('clearance above', () => {
  const pole = [-300, 0, 0, 3000, 20];

  it('is level distance beside an obstacle, and slant distance over it', () => {
    expect(airClear(1000, 1400, 250, 0, 100, 300, 0, [pole])).toBeCloseTo(130, 9);
    // 60 mm above the head of a rail that it would otherwise overlap.
    expect(airClear(1000, 1400, 250, 0, 100, 300, 0, [[0, 0, 0, 940, 20]])).toBeCloseTo(60, 9);
    // 30 beyond the circle and 40 below it.
    expect(airClear(1000, 1400, 250, 0, 100, 300, 0, [[400, 0, 0, 960, 20]])).toBeCloseTo(50, 9);
  });

  it.each([
    [10, 0],
    [0, 8],
    [6, -9],
  ])('is the least along a shaft that leans %i° aft and %i° to starboard', (aft, side) => {
    const [run, across] = [Math.tan((aft * Math.PI) / 180), Math.tan((side * Math.PI) / 180)];
    fc.assert(
      fc.property(
        fc.double({ min: -800, max: 800, noNaN: true }),
        fc.double({ min: -400, max: 400, noNaN: true }),
        (x, y) => {
          let least = Number.POSITIVE_INFINITY;
          for (let z = 900; z <= 1300; z += 0.5) {
            const axis = [100 + (z - 300) * run, (z - 300) * across] as const;
            least = Math.min(least, Math.hypot(axis[0] - x, axis[1] - y) - 250);
          }
          const got = airClear(900, 1400, 250, 0, 100, 300, aft, [[x, y, 0, 1300, 0]], side) as number;
          expect(Math.abs(got - least)).toBeLessThan(0.3);
          expect(got).toBeLessThanOrEqual(least + 1e-9);
        },
      ),
    );
  });
});
