import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { tan } from '../../../src/calc/angle.ts';
import { faceProfile } from '../../../src/calc/survey/face-profile.ts';
import { levelledHeight, levelledSlope } from '../../../src/calc/survey/lie.ts';
import { plumbedHollow, plumbedSlope, plumbedX, plumbLineAft } from '../../../src/calc/survey/plumb.ts';
import { profileX } from '../../../src/calc/transom/profile.ts';
import { againstGravity, readingsOf } from './known-boat.ts';

const angle = (most: number) => fc.double({ min: -most, max: most, noNaN: true });
const boat = fc.record({
  rake: angle(35),
  trim: angle(4),
  list: angle(6),
  lineAft: fc.double({ min: 200, max: 900, noNaN: true }),
  zero: fc.double({ min: -300, max: 300, noNaN: true }),
});
const HEIGHTS = [-40, 120, 260, 430, 610, 820];

describe('a survey of a boat whose shape is known', () => {
  it('gives back its rake, however the boat lies', () => {
    fc.assert(
      fc.property(boat, ({ rake, trim, list, lineAft, zero }) => {
        const face = HEIGHTS.map((z) => [z * tan(rake), z] as const);
        const rows = readingsOf(face, lineAft, zero, trim, list);
        expect(levelledSlope(plumbedSlope(rows) as number, trim, list)).toBeCloseTo(rake, 7);
        expect(plumbLineAft(rows, zero)).toBeCloseTo(lineAft, 6);
        expect(plumbedHollow(rows)).toBeCloseTo(0, 6);
      }),
    );
  });

  it("gives back the boat's own rudder at its head and foot", () => {
    fc.assert(
      fc.property(boat, angle(12), ({ rake, trim, list, lineAft, zero }, edge) => {
        const face = readingsOf(
          HEIGHTS.map((z) => [z * tan(rake), z] as const),
          lineAft,
          zero,
          trim,
          list,
        );
        const at = (z: number) => 35 - (z + 100) * tan(edge);
        const rudder = readingsOf(
          [-150, -400, -700, -1100].map((z) => [at(z), z] as const),
          lineAft,
          zero,
          trim,
          list,
        );
        const line = plumbLineAft(face, zero) as number;
        for (const z of [-100, -1200]) {
          expect(plumbedX(rudder, z, zero, line, trim, list)).toBeCloseTo(at(z), 5);
        }
      }),
    );
  });

  it('gives back heights read plumb', () => {
    fc.assert(
      fc.property(boat, angle(900), angle(1500), ({ trim, list }, x, z) => {
        const { aft, up } = againstGravity(x, z, trim, list);
        expect(levelledHeight(up, aft, trim, list)).toBeCloseTo(z, 6);
      }),
    );
  });

  it('gives back a bent face', () => {
    fc.assert(
      fc.property(boat, ({ rake, trim, list, lineAft, zero }) => {
        const bent = HEIGHTS.map((z) => [z * tan(rake) - 8 * Math.sin(z / 300), z] as const);
        const rows = readingsOf(bent, lineAft, zero, trim, list);
        const profile = faceProfile(true, rows, zero, lineAft, trim, list);
        for (const [x, z] of bent) expect(profileX(z, 0, profile)).toBeCloseTo(x, 5);
      }),
    );
  });
});

describe('corrections worked by hand', () => {
  // 600 mm up and 100 mm aft of the mark, stern 2° deep, 3° of list:
  // (100 · 0.034899497 + 600 · 0.999390827) / 0.998629535 = 603.124446 / 0.998629535 = 603.952141.
  it('a height', () => expect(levelledHeight(600, 100, 2, 3)).toBeCloseTo(603.952141, 5));

  // A face that reads 10° aft on a boat with the stern 2° deep has 8° of rake.
  it('a rake', () => {
    const rows = [0, 300, 600].map((z) => [z, 500 - z * 0.17632698070846498]);
    expect(levelledSlope(plumbedSlope(rows) as number, 2, 0)).toBeCloseTo(8, 9);
  });

  it('follows the measured face only when told to, and with three heights', () => {
    const rows = [
      [400, 260],
      [0, 300],
      [200, 275],
    ];
    expect(faceProfile(false, rows, 0, 300, 0, 0)).toEqual([]);
    expect(faceProfile(true, rows.slice(1), 0, 300, 0, 0)).toEqual([]);
    expect(faceProfile(true, rows, 10, 300, 0, 0)).toEqual([
      [10, 0],
      [210, 25],
      [410, 40],
    ]);
  });

  it('takes two readings at one height as their mean', () => {
    const rows = [
      [0, 300],
      [200, 270],
      [200, 280],
      [400, 260],
    ];
    expect(faceProfile(true, rows, 0, 300, 0, 0)).toEqual([
      [0, 0],
      [200, 25],
      [400, 40],
    ]);
  });
});
