import { describe, expect, it } from 'vitest';
import { straightLine } from '../../../src/calc/survey/straight-line.ts';

// NIST StRD, linear regression, Norris (US public domain).
const X = [
  0.2, 337.4, 118.2, 884.6, 10.1, 226.5, 666.3, 996.3, 448.6, 777.0, 558.2, 0.4, 0.6, 775.5, 666.9, 338.0, 447.5, 11.6,
  556.0, 228.1, 995.8, 887.6, 120.2, 0.3, 0.3, 556.8, 339.1, 887.2, 999.0, 779.0, 11.1, 118.3, 229.2, 669.1, 448.9, 0.5,
];
const Y = [
  0.1, 338.8, 118.1, 888.0, 9.2, 228.1, 668.5, 998.5, 449.1, 778.9, 559.2, 0.3, 0.1, 778.1, 668.8, 339.3, 448.9, 10.8,
  557.7, 228.3, 998.0, 888.8, 119.6, 0.3, 0.6, 557.6, 339.3, 888.0, 998.5, 778.9, 10.2, 117.6, 228.9, 668.4, 449.2, 0.2,
];

const relative = (given: number | undefined, certified: number): number =>
  Math.abs((given ?? Number.NaN) - certified) / Math.abs(certified);

describe('a straight line by least squares', () => {
  const line = straightLine(X.map((x, i) => [x, Y[i] ?? Number.NaN]));

  it.each([
    ['slope', line?.slope, 1.00211681802045],
    ['slope error', line?.slopeError, 0.429796848199937e-3],
    ['intercept', line?.intercept, -0.262323073774029],
    ['intercept error', line?.interceptError, 0.232818234301152],
    ['residual sum of squares', line?.residualSum, 26.6173985294224],
    ['share explained', line?.explained, 0.999993745883712],
  ])('gives the certified %s of NIST StRD Norris', (_, given, certified) => {
    expect(relative(given, certified)).toBeLessThan(1e-9);
  });

  it('has no answer for points at one place', () => {
    expect(straightLine([[1, 2]])).toBeUndefined();
    expect(
      straightLine([
        [1, 2],
        [1, 5],
      ]),
    ).toBeUndefined();
  });

  it('passes through two points and says nothing about how sure it is', () => {
    const two = straightLine([
      [0, 1],
      [2, 5],
    ]);
    expect(two).toMatchObject({ slope: 2, intercept: 1 });
    expect(two?.slopeError).toBeNaN();
  });
});
