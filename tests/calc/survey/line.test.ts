import { linearRegression } from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import { NoAnswer } from '../../../src/calc/answer.ts';
import { fitLine, type Line, type LineErrors, lineErrors } from '../../../src/calc/survey/line.ts';
import { NORRIS, NORRIS_X, NORRIS_Y } from './norris.ts';

const line = (points: readonly (readonly number[])[]): Line => {
  const it = fitLine(points);
  if (it instanceof NoAnswer) throw new Error(it.why);
  return it;
};
const errors = (it: Line): LineErrors => {
  const known = lineErrors(it);
  if (known instanceof NoAnswer) throw new Error(known.why);
  return known;
};

const relative = (got: number, wanted: number): number => Math.abs(got / wanted - 1);

describe('a straight line by least squares', () => {
  const points = NORRIS_X.map((x, i) => [x, NORRIS_Y[i] as number] as const);

  it('gives the certified values of NIST StRD Norris', () => {
    const it = line(points);
    const known = errors(it);
    expect(relative(it.intercept, NORRIS.intercept)).toBeLessThan(1e-11);
    expect(relative(it.slope, NORRIS.slope)).toBeLessThan(1e-13);
    expect(relative(known.intercept, NORRIS.interceptError)).toBeLessThan(1e-12);
    expect(relative(known.slope, NORRIS.slopeError)).toBeLessThan(1e-12);
    expect(relative(it.residualSquares, NORRIS.residualSquares)).toBeLessThan(1e-12);
  });

  it('keeps its digits when the heights stand far from zero', () => {
    const far = line(points.map(([x, y]) => [x + 1e6, y]));
    expect(relative(far.slope, NORRIS.slope)).toBeLessThan(1e-10);
  });

  it('agrees with a general-purpose library', () => {
    const theirs = linearRegression(points.map(([x, y]) => [x, y]));
    expect(relative(line(points).slope, theirs.m)).toBeLessThan(1e-11);
    expect(relative(line(points).intercept, theirs.b)).toBeLessThan(1e-8);
  });

  it('counts a row by the inverse square of what it may be off', () => {
    // Half as far off counts four times: the same line as four such rows, by a general-purpose library.
    const rows = [
      [0, 500, 2],
      [150, 471, 1],
      [330, 436, 2],
      [480, 409, 1],
      [700, 361, 2],
    ] as const;
    const repeated = rows.flatMap(([x, y, off]) => Array.from({ length: 4 / off ** 2 }, () => [x, y]));
    expect(repeated).toHaveLength(11);
    const theirs = linearRegression(repeated);
    const it = line(rows);
    expect(relative(it.slope, theirs.m)).toBeLessThan(1e-12);
    expect(relative(it.intercept, theirs.b)).toBeLessThan(1e-12);
    expect(relative(it.slope, line(rows.map(([x, y]) => [x, y])).slope)).toBeGreaterThan(1e-4);
    // The standard errors of y = a + bx with known relative weights: s² (XᵀWX)⁻¹, written out.
    const sum = (of: (row: (typeof rows)[number]) => number) => rows.reduce((all, row) => all + of(row), 0);
    const w = ([, , off]: (typeof rows)[number]) => 1 / off ** 2;
    const [sw, swx, swxx] = [sum(w), sum((r) => w(r) * r[0]), sum((r) => w(r) * r[0] ** 2)];
    const s2 = sum((r) => w(r) * (r[1] - theirs.b - theirs.m * r[0]) ** 2) / (rows.length - 2);
    const known = errors(it);
    expect(relative(known.slope, Math.sqrt((s2 * sw) / (sw * swxx - swx ** 2)))).toBeLessThan(1e-9);
    expect(relative(known.intercept, Math.sqrt((s2 * swxx) / (sw * swxx - swx ** 2)))).toBeLessThan(1e-9);
  });

  it('gives the ordinary line, to the last digit, when all may be as far off', () => {
    const same = line(points.map(([x, y]) => [x, y, 3]));
    expect(same).toEqual(line(points));
  });

  it('says what is missing', () => {
    expect(fitLine([[1, 2]])).toEqual(new NoAnswer('A line takes two rows or more; the table has 1 in use.'));
    expect(
      fitLine([
        [5, 1],
        [5, 2],
      ]),
    ).toBeInstanceOf(NoAnswer);
    expect(
      lineErrors(
        line([
          [0, 1],
          [5, 2],
        ]),
      ),
    ).toBeInstanceOf(NoAnswer);
  });
});
