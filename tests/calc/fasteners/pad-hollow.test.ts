import { describe, expect, it } from 'vitest';
import { NoAnswer } from '../../../src/calc/answer.ts';
import { padHollow } from '../../../src/calc/fasteners/pad-hollow.ts';
import { faceNormal } from '../../../src/calc/struts/foot-pin.ts';
import { faceX } from '../../../src/calc/transom/face-x.ts';
import { localRadius } from '../../../src/calc/transom/local-radius.ts';

describe('the hollow of a pad', () => {
  // Sagitta of a chord, exact closed form R − √(R² − c²/4), recomputed to 15 digits.
  it.each([
    [1000, 200, 5.01256289338005],
    [2500, 600, 18.0652708018288],
    [10000, 1000, 12.5078222809097],
    [500, 400, 41.742430504416],
  ])('R %s, chord %s: %s', (radius, chord, sagitta) => {
    const hollow = padHollow(chord, radius) as number;
    expect(Math.abs(hollow / sagitta - 1)).toBeLessThan(1e-12);
    // And back: R = c²/(8s) + s/2.
    expect((chord * chord) / (8 * hollow) + hollow / 2).toBeCloseTo(radius, 8);
  });

  it('is nothing on a flat face, and has no answer past the whole circle', () => {
    expect(padHollow(300, 0)).toBe(0);
    expect(padHollow(300, 140)).toBeInstanceOf(NoAnswer);
  });
});

describe('the radius under a flange', () => {
  it('is the level radius on an upright face, wherever the flange is', () => {
    for (const y of [0, 200, -450]) expect(localRadius(y, 500, 0, 1200)).toBeCloseTo(1200, 9);
  });

  it('agrees with the face itself: the gap under a short flange is c²/8R', () => {
    for (const [y, rake, radius] of [
      [0, 30, 900],
      [250, -25, 1100],
      [-300, 40, 700],
    ] as const) {
      // Two points of the face a little to each side of the middle, level, and how far they stand behind the tangent plane.
      const half = 0.5;
      const n = faceNormal(y, 600, rake, radius);
      const x0 = faceX(y, 600, rake, radius) as number;
      const behind = [-half, half].map((d) => {
        const x = faceX(y + d, 600, rake, radius) as number;
        return -((x - x0) * n.x + d * n.y);
      });
      const chord = (2 * half) / Math.cos(Math.atan(n.y / n.x));
      const sagitta = ((behind[0] ?? 0) + (behind[1] ?? 0)) / 2;
      expect((chord * chord) / (8 * sagitta) / (localRadius(y, 600, rake, radius) as number)).toBeCloseTo(
        1,
        4,
      );
    }
  });
});
