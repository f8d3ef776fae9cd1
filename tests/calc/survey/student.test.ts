import { expect, it } from 'vitest';
import { studentTails } from '../../../src/calc/survey/student.ts';

// JCGM 100:2008, table G.2, with more digits recomputed: t with 95 % or 99 % of the distribution within.
it.each([
  [2.5705818, 5, 0.05],
  [2.1199053, 16, 0.05],
  [2.0930241, 19, 0.05],
  [2.9207816, 16, 0.01],
  // The Cauchy distribution, closed form: half is within 1.
  [1, 1, 0.5],
])('%s with %s degrees of freedom leaves %s outside', (t, freedom, outside) => {
  expect(studentTails(t, freedom)).toBeCloseTo(outside, 7);
  expect(studentTails(-t, freedom)).toBeCloseTo(outside, 7);
});
