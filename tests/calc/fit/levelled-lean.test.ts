import { describe, expect, it } from 'vitest';
import { bobLean } from '../../../src/calc/fit/bob-lean.ts';
import { levelledLeans } from '../../../src/calc/fit/levelled-lean.ts';
import { levelledSlope } from '../../../src/calc/survey/lie.ts';

const rad = (it: number): number => (it * Math.PI) / 180;

/** The direction of a shaft in the boat, turned into the world by matrices written out here, and read with a bob. */
function readWithBob(aft: number, side: number, trim: number, list: number) {
  const boat = [Math.tan(rad(aft)), Math.tan(rad(side)), 1] as const;
  const [c, s] = [Math.cos(rad(list)), Math.sin(rad(list))];
  const heeled = [boat[0], boat[1] * c + boat[2] * s, -boat[1] * s + boat[2] * c] as const;
  const [ct, st] = [Math.cos(rad(trim)), Math.sin(rad(trim))];
  const world = [heeled[0] * ct + heeled[2] * st, heeled[1], -heeled[0] * st + heeled[2] * ct] as const;
  const apart = 550;
  return {
    aft: bobLean((world[0] / world[2]) * apart + 40, 40, apart),
    side: bobLean((world[1] / world[2]) * apart - 12, -12, apart),
  };
}

describe('levelledLeans', () => {
  it.each([
    [0, 0, 0, 0],
    [1, 0, 0, 2],
    [0.5, -0.4, 1.5, -3],
    [-4, 2, -6, 8],
    [12, -9, 10, -15],
  ])(
    'finds a shaft leaning %f aft and %f to the side on a boat at trim %f, list %f',
    (aft, side, trim, list) => {
      // Rotation matrices about two axes, multiplied out: any text on rigid bodies.
      const found = levelledLeans(readWithBob(aft, side, trim, list), { trim, list });
      expect(found.aft).toBeCloseTo(aft, 9);
      expect(found.side).toBeCloseTo(side, 9);
    },
  );

  it('agrees with the survey on a shaft that lies in the boat’s own middle plane', () => {
    const seen = readWithBob(7, 0, 2, 5);
    expect(levelledLeans(seen, { trim: 2, list: 5 }).aft).toBeCloseTo(levelledSlope(seen.aft, 2, 5), 9);
  });

  it('takes nothing off when the boat lies as it sails, and all of the list off a plumb shaft', () => {
    expect(levelledLeans({ aft: 0.3, side: 0.2 }, { trim: 0, list: 0 })).toEqual({
      aft: expect.closeTo(0.3, 12),
      side: expect.closeTo(0.2, 12),
    });
    expect(levelledLeans({ aft: 0, side: 0 }, { trim: 0, list: 1.5 }).side).toBeCloseTo(-1.5, 12);
  });
});

describe('bobLean', () => {
  it('is the arc tangent of the offset over the distance', () => {
    // By hand: 6 mm over 550 mm is 0.625°.
    expect(bobLean(66, 60, 550)).toBeCloseTo(0.62502, 5);
    expect(bobLean(60, 66, 550)).toBeCloseTo(-0.62502, 5);
  });
});
