import { type Fraction, fraction, multiply, roundHalfAway } from './fraction.ts';

/** The nearest fraction with so many decimals; half-way goes away from zero. */
export const roundDecimal = (value: Fraction, decimals: number): Fraction => {
  const scale = 10n ** BigInt(decimals);
  return fraction(roundHalfAway(multiply(value, fraction(scale, 1n))), scale);
};
