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
