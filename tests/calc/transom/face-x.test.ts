import fc from 'fast-check';
import { Vector3 } from 'three';
import { describe, expect, it } from 'vitest';
import { NoAnswer } from '../../../src/calc/answer.ts';
import { faceNormal } from '../../../src/calc/struts/foot-pin.ts';
import { camber, faceX } from '../../../src/calc/transom/face-x.ts';
import { within } from '../within.ts';

describe('the camber of the transom', () => {
  // Sagitta of a chord, s = R − √(R² − c²/4): closed form to 15 digits.
  it.each([
    [1000, 200, 5.01256289338005],
    [2500, 600, 18.0652708018288],
    [10_000, 1000, 12.5078222809097],
    [500, 400, 41.742430504416],
  ])('R %d, chord %d: sagitta %d', (radius, chord, sagitta) => {
    const s = camber(chord / 2, radius);
    expect(Math.abs(s / sagitta - 1)).toBeLessThanOrEqual(1e-12);
    // The radius comes back from chord and sagitta: R = c²/(8s) + s/2.
    expect(Math.abs((chord * chord) / (8 * s) + s / 2 - radius)).toBeLessThanOrEqual(1e-9 * radius);
    expect(faceX(chord / 2, 0, 0, radius)).toBe(-s);
    expect(faceX(-chord / 2, 0, 0, radius)).toBe(-s);
  });

  it('keeps its digits on a nearly flat face, where R − √(R² − y²) would lose them', () => {
    // Series of the sagitta: y²/2R + y⁴/8R³ + …, exact to a double at this flatness.
    for (const y of [1, 3, 10]) {
      const series = (y * y) / 2e6 + y ** 4 / 8e18;
      expect(Math.abs(camber(y, 1e6) / series - 1)).toBeLessThanOrEqual(1e-12);
    }
    const naive = 1e6 - Math.sqrt(1e12 - 1);
    expect(Math.abs(naive / 5e-7 - 1)).toBeGreaterThan(1e-6);
  });

  it('is no camber at all with a radius of 0, and no face where it has curved away', () => {
    expect(camber(400, 0)).toBe(0);
    expect(faceX(300, 100, 45, 0)).toBeCloseTo(100, 12);
    for (const y of [500, -500, 600]) expect(faceX(y, 0, 0, 500)).toBeInstanceOf(NoAnswer);
  });
});

describe('the normal of the face', () => {
  it('stands square on the face and points aft', () => {
    const share = within(-0.95, 0.95);
    fc.assert(
      fc.property(share, within(-1000, 1000), within(-60, 60), within(300, 20_000), (y, z, rake, radius) => {
        const at = (dy: number, dz: number) =>
          new Vector3(faceX(y * radius + dy, z + dz, rake, radius) as number, y * radius + dy, z + dz);
        const step = 1e-3 * radius * (1 - Math.abs(y));
        const across = at(step, 0).sub(at(-step, 0)).normalize();
        const up = at(0, 1).sub(at(0, -1)).normalize();
        const { x, y: ny, z: nz } = faceNormal(y * radius, z, rake, radius);
        const normal = new Vector3(x, ny, nz);
        expect(normal.length()).toBeCloseTo(1, 12);
        expect(normal.x).toBeGreaterThan(0);
        expect(Math.abs(normal.dot(across))).toBeLessThanOrEqual(1e-5);
        expect(Math.abs(normal.dot(up))).toBeLessThanOrEqual(1e-9);
      }),
    );
  });
});
