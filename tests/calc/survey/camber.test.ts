import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { NoAnswer } from '../../../src/calc/answer.ts';
import { surveyCamber } from '../../../src/calc/survey/camber.ts';
import { camber } from '../../../src/calc/transom/face-x.ts';

describe('camber from a straightedge and gaps', () => {
  it('gives back the radius of a known arc', () => {
    fc.assert(
      fc.property(fc.double({ min: 700, max: 60_000, noNaN: true }), (radius) => {
        const rows = [150, -300, 450, 600].map((half) => [half, camber(half, radius)]);
        expect(Math.abs((surveyCamber(rows) as number) / radius - 1)).toBeLessThan(1e-8);
      }),
    );
  });

  // Exact sagittas, closed form: R = (a² + s²)/2s; 300² + 20² = 90 400, over 40.
  it('takes one gap by the closed form', () => expect(surveyCamber([[300, 20]])).toBeCloseTo(2260, 6));

  it('lies between the radii of gaps that disagree', () => {
    const both = surveyCamber([
      [300, 20],
      [300, 22],
    ]) as number;
    expect(both).toBeGreaterThan((300 ** 2 + 22 ** 2) / 44);
    expect(both).toBeLessThan(2260);
  });

  it('is 0 when there is no gap, and has no answer when hollow', () => {
    expect(surveyCamber([[300, 0]])).toBe(0);
    expect(surveyCamber([[300, -5]])).toBeInstanceOf(NoAnswer);
    expect(surveyCamber([[100, 300]])).toBeInstanceOf(NoAnswer);
    expect(surveyCamber([])).toBeInstanceOf(NoAnswer);
  });
});
