import * as statistics from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import { logGamma } from '../../../src/calc/uncertainty/beta.ts';
import {
  normalAbove,
  normalBelow,
  normalDensity,
  normalQuantile,
} from '../../../src/calc/uncertainty/normal.ts';
import { studentBelow, studentFactor } from '../../../src/calc/uncertainty/student.ts';

/** Chance above z by the series of the error function for small z, by its continued fraction for large z. */
function aboveBySeries(z: number): number {
  if (z < 3) {
    let term = z;
    let sum = z;
    for (let k = 1; k < 200; k++) {
      term *= (z * z) / (2 * k + 1);
      sum += term;
    }
    return 0.5 - normalDensity(z) * sum;
  }
  let fraction = z;
  for (let k = 400; k > 0; k--) fraction = z + k / fraction;
  return normalDensity(z) / fraction;
}

describe('the normal law', () => {
  // Standard tables to 16 digits, recomputed from the closed form.
  it.each([
    [0.9, 1.2815515655446004],
    [0.95, 1.6448536269514722],
    [0.975, 1.959963984540054],
    [0.99, 2.3263478740408408],
    [0.995, 2.5758293035489004],
    [0.999, 3.090232306167813],
  ])('has %f of its values below %f', (chance, z) => {
    expect(Math.abs(normalQuantile(chance) - z)).toBeLessThan(1e-12);
    expect(Math.abs(normalQuantile(1 - chance) + z)).toBeLessThan(1e-12);
    expect(Math.abs(normalBelow(z) - chance)).toBeLessThan(1e-14);
  });

  it('agrees with a series and a continued fraction far into its tail', () => {
    for (let z = 0; z < 36; z += 0.37) {
      const by = aboveBySeries(z);
      expect(Math.abs(normalAbove(z) / by - 1)).toBeLessThan(z < 3 ? 1e-11 : 3e-13);
    }
  });

  it('finds its way back from a chance, in the tail too', () => {
    for (let z = -8; z <= 8; z += 0.25) {
      const back = z < 0 ? normalQuantile(normalBelow(z)) : -normalQuantile(normalAbove(z));
      expect(Math.abs(back - z)).toBeLessThan(1e-12);
    }
  });

  it('agrees with a general library to its accuracy', () => {
    for (const z of [-2.5, -1, 0, 0.3, 1.7]) {
      // Its table holds four digits.
      expect(normalBelow(z)).toBeCloseTo(statistics.cumulativeStdNormalProbability(z), 3);
    }
  });
});

describe('Student’s law', () => {
  // JCGM 100:2008, table G.2, to more digits.
  it.each([
    [0.95, 5, 2.5705818],
    [0.95, 16, 2.1199053],
    [0.95, 19, 2.0930241],
    [0.99, 16, 2.9207816],
  ])('holds %f within a half-width, %i degrees of freedom', (share, freedom, t) => {
    expect(Math.abs(studentFactor(share, freedom) - t)).toBeLessThan(1e-7);
  });

  it('is Cauchy’s law at one degree of freedom and the normal one without end', () => {
    expect(studentBelow(1, 1)).toBeCloseTo(0.75, 13);
    expect(studentBelow(-2, 1)).toBeCloseTo(0.5 - Math.atan(2) / Math.PI, 13);
    expect(studentFactor(0.95, Number.POSITIVE_INFINITY)).toBeCloseTo(1.959963984540054, 12);
  });
});

it('the gamma function gives factorials and the root of pi', () => {
  let factorial = 1;
  for (let n = 1; n < 20; n++) {
    factorial *= n;
    expect(Math.abs(logGamma(n + 1) - Math.log(factorial))).toBeLessThan(1e-13 * (1 + Math.log(factorial)));
  }
  expect(logGamma(0.5)).toBeCloseTo(Math.log(Math.sqrt(Math.PI)), 13);
});
