import { describe, expect, it } from 'vitest';
import { normalQuantile } from '../../../src/calc/uncertainty/normal.ts';
import { sobolPoints } from '../../../src/calc/uncertainty/sobol.ts';
import { stretch, widening } from '../../../src/calc/uncertainty/student-pair.ts';

const COUNT = 2 ** 15;

/** Pairs that follow the law, from even points. */
function pairs(freedom: number | null): readonly (readonly [number, number])[] {
  const [a, b] = sobolPoints(2, COUNT, 3).map((column) => column.map(normalQuantile));
  return Array.from({ length: COUNT }, (_, n) => {
    const [x, y] = [a?.[n] ?? 0, b?.[n] ?? 0];
    const by = stretch(x, y, freedom);
    return [by * x, by * y];
  });
}

const share = (all: readonly boolean[]): number => all.filter(Boolean).length / all.length;

describe("two errors by Student's law", () => {
  // Two-sided 95 % values of W. S. Gosset's table, as in JCGM 100:2008, Table G.2.
  it.each([
    [1, 12.706],
    [2, 4.3027],
    [4, 2.7764],
    [5, 2.5705818],
    [6, 2.4469],
    [16, 2.1199053],
  ])('each lies with 95 % within the published value, in every direction: %i degrees', (freedom, within) => {
    const all = pairs(freedom);
    for (const turn of [0, 0.6, Math.PI / 2]) {
      const along = all.map(([x, y]) => x * Math.cos(turn) + y * Math.sin(turn));
      expect(share(along.map((it) => Math.abs(it) < within))).toBeCloseTo(0.95, 3);
    }
  });

  it('both together lie within the ellipse that Fisher’s F gives', () => {
    // F(2, 4) at 95 % is 6.944, at 50 % 0.828 (tables of the variance ratio): a radius of √(2F).
    const all = pairs(4).map(([x, y]) => Math.hypot(x, y));
    expect(share(all.map((it) => it < Math.sqrt(2 * 6.9443)))).toBeCloseTo(0.95, 3);
    expect(share(all.map((it) => it < Math.sqrt(2 * 0.828427)))).toBeCloseTo(0.5, 3);
  });

  it('have the variance of the law where it has one: 8/6 with eight degrees', () => {
    const all = pairs(8);
    expect(all.reduce((sum, [x]) => sum + x * x, 0) / COUNT).toBeCloseTo(8 / 6, 2);
  });

  it('stay normal without end of degrees, keep their digits in the middle, and never grow past all numbers', () => {
    expect(stretch(3, -2, null)).toBe(1);
    expect(stretch(3, -2, 1e9)).toBeCloseTo(1, 8);
    expect(stretch(1e-9, 1e-9, 2)).toBe(1);
    expect(stretch(0, 0, 2)).toBe(1);
    expect(Number.isFinite(stretch(60, 60, 1) * 60)).toBe(true);
  });

  it('widen by the quotient of the two published values', () => {
    expect(widening(6)).toBeCloseTo(2.446912 / 1.959964, 6);
    expect(widening(null)).toBe(1);
  });
});
