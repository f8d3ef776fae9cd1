import { studentFactor } from './student.ts';

/** Deviations of a normal law within which 95 % of it lie. */
const NORMAL_95 = studentFactor(0.95, Number.POSITIVE_INFINITY);

/**
 * By how much the 95 % interval of Student's law is wider than a normal one's: its deviation where one figure has to
 * stand for it. The law itself has none with one or two degrees of freedom.
 */
export const widening = (freedom: number | null): number =>
  freedom === null ? 1 : studentFactor(0.95, freedom) / NORMAL_95;

/** From this distance on, which no draw comes to, errors grow in step with their scores, lest they grow past all numbers. */
const FURTHEST = 8;

/**
 * What two independent normal scores are to be multiplied by so that they follow Student's law of two dimensions, as
 * what is fitted does once its own scatter says how far it may be off: the chance that a pair of normal scores lies
 * beyond a distance d is exp(−d²/2), that of a Student pair (1 + d²/ν)^(−ν/2). Each of the two then follows Student's
 * law with ν degrees of freedom; without end of them, null, it stays normal.
 */
export function stretch(a: number, b: number, freedom: number | null): number {
  if (freedom === null) return 1;
  const square = Math.min(a * a + b * b, FURTHEST ** 2) / freedom;
  // Near the middle the quotient loses its figures, and its series has them.
  return Math.sqrt(square < 1e-8 ? 1 + square / 2 : Math.expm1(square) / square);
}
