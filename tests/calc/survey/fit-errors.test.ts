import { describe, expect, it } from 'vitest';
import { surveyCamber } from '../../../src/calc/survey/camber.ts';
import { camberFitErrors, type FitErrors, lineFitErrors } from '../../../src/calc/survey/fit-errors.ts';
import { fitLine, type Line } from '../../../src/calc/survey/line.ts';
import { normalQuantile } from '../../../src/calc/uncertainty/normal.ts';
import { seeded } from '../../../src/calc/uncertainty/seeded.ts';
import { NORRIS, NORRIS_X, NORRIS_Y } from './norris.ts';

const known = (errors: FitErrors | undefined): FitErrors => {
  if (errors === undefined) throw new Error('no fit');
  return errors;
};

/** The rows moved by so many deviations of the fit's two errors. */
const moved = (rows: readonly (readonly number[])[], { rows: by }: FitErrors, a: number, b: number) =>
  rows.map((row, i) => {
    const it = by.find(({ at }) => at === i);
    return it === undefined ? row : [row[0] ?? 0, it.middle + a * it.by[0] + b * it.by[1], ...row.slice(2)];
  });

describe('how far a line through rows may be off', () => {
  const rows = NORRIS_X.map((x, i) => [x, NORRIS_Y[i] as number]);

  it('is what NIST certifies for StRD Norris: one deviation of each error, put into the rows and fitted again', () => {
    const errors = known(lineFitErrors(rows));
    expect(errors.freedom).toBe(34);
    const fitted = (a: number, b: number) => fitLine(moved(rows, errors, a, b)) as Line;
    expect(fitted(0, 1).slope - NORRIS.slope).toBeCloseTo(NORRIS.slopeError, 12);
    expect(fitted(1, 0).slope).toBeCloseTo(NORRIS.slope, 12);
    const intercepts = [fitted(1, 0), fitted(0, 1)].map((it) => it.intercept - NORRIS.intercept);
    expect(Math.hypot(...intercepts)).toBeCloseTo(NORRIS.interceptError, 10);
  });

  it('follows the rows’ own ± where two rows, or rows all on the line, tell nothing', () => {
    const two = known(
      lineFitErrors([
        [0, 500, 3],
        [400, 540, 3],
      ]),
    );
    expect(two.freedom).toBeNull();
    // By hand: each row 3/√3 off, so the mean 3/√6, and either end half the difference's 3/√6 more.
    expect(two.rows.map((it) => it.by[0])).toEqual([
      expect.closeTo(3 / Math.sqrt(6)),
      expect.closeTo(3 / Math.sqrt(6)),
    ]);
    expect(two.rows.map((it) => it.by[1])).toEqual([
      expect.closeTo(-3 / Math.sqrt(6)),
      expect.closeTo(3 / Math.sqrt(6)),
    ]);
    const straight = [0, 100, 200, 300].map((height) => [height, 500 - height / 10, 2]);
    expect(known(lineFitErrors(straight)).freedom).toBeNull();
    expect(lineFitErrors([[0, 500, 3]])).toBeUndefined();
  });

  it('lets a row count by what it may be off', () => {
    const rows = [
      [0, 500, 2],
      [150, 471, 1],
      [330, 436, 2],
      [480, 409, 1],
      [700, 361, 2],
    ];
    const { rows: errors } = known(lineFitErrors(rows));
    expect((errors[0]?.deviation ?? 0) / (errors[1]?.deviation ?? 1)).toBeCloseTo(2, 12);
  });
});

describe('the interval of a slope over 10,000 surveys of a known face', () => {
  // Two-sided 95 % values of Student's table, with n − 2 degrees of freedom; shares within one standard error.
  it.each([
    [4, 4.302653, 0.5774],
    [6, 2.776445, 0.6261],
    [8, 2.446912, 0.6441],
  ])(
    'holds the truth in those with %i rows as often as it says, and one standard error in far fewer',
    (count, within, one) => {
      const random = seeded(11 * count);
      const heights = Array.from({ length: count }, (_, i) => 100 + (800 * i) / (count - 1));
      let [inside, close, told] = [0, 0, 0];
      const surveys = 10_000;
      for (let n = 0; n < surveys; n++) {
        const rows = heights.map((z) => [z, 600 + 0.17 * z + 2 * normalQuantile(random()), 3]);
        const { freedom, rows: by } = known(lineFitErrors(rows));
        const [first, last] = [by[0], by.at(-1)];
        const error = ((last?.by[1] ?? 0) - (first?.by[1] ?? 0)) / 800;
        const off = Math.abs((fitLine(rows) as Line).slope - 0.17) / error;
        // By chance a few surveys of four rows lie on their line, and go by the rows' own ±.
        if (off < (freedom === null ? 1.959964 : within)) inside++;
        if (freedom === count - 2) told++;
        if (off < 1) close++;
      }
      expect(told / surveys).toBeGreaterThan(0.999);
      expect(inside / surveys).toBeGreaterThan(0.94);
      expect(inside / surveys).toBeLessThan(0.96);
      expect(Math.abs(close / surveys - one)).toBeLessThan(0.015);
    },
  );
});

describe('how far a circle through gaps may be off', () => {
  const gapsOf = (radius: number, noise: readonly number[]) =>
    [-500, -350, -200, 200, 350, 500].map((out, i) => [
      out,
      radius - Math.sqrt(radius ** 2 - out ** 2) + (noise[i] ?? 0),
      1,
    ]);

  it('is least squares’ own error of the curvature, near enough, with n − 1 degrees of freedom', () => {
    const rows = gapsOf(2500, [0.6, -0.4, 0.3, -0.5, 0.2, -0.3]);
    const errors = known(camberFitErrors(rows));
    expect(errors.freedom).toBe(5);
    const middle = surveyCamber(moved(rows, errors, 0, 0)) as number;
    expect(middle).toBeCloseTo(surveyCamber(rows) as number, 6);
    const off = 1 / (surveyCamber(moved(rows, errors, 1, 0)) as number) - 1 / middle;
    // Written out: gaps are curvature × out²/2 to first order, so s/√Σ(out²/2)².
    const residuals = rows.map(([out = 0, gap = 0]) => gap - (middle - Math.sqrt(middle ** 2 - out ** 2)));
    const scatter = Math.sqrt(residuals.reduce((sum, it) => sum + it * it, 0) / 5);
    const plain = scatter / Math.sqrt(rows.reduce((sum, [out = 0]) => sum + (out * out) ** 2 / 4, 0));
    expect(off / plain).toBeGreaterThan(0.95);
    expect(off / plain).toBeLessThan(1.05);
  });

  it('never says that a flat face is hollow, nor that a gap is no circle’s', () => {
    const rows = gapsOf(1e9, [0.6, -0.4, 0.3, -0.1, 0.2, 0.4]);
    const errors = known(camberFitErrors(rows));
    const { least = 0, most = 0 } = errors;
    expect(surveyCamber(moved(rows, errors, least, 0))).toBe(0);
    expect(surveyCamber(moved(rows, errors, most, 0))).toBeGreaterThan(500);
  });
});
