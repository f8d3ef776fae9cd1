import type { Fraction } from './fraction.ts';
import { roundDecimal } from './round-decimal.ts';

/** A true minus, U+2212. */
export const MINUS = '−';

/**
 * A value as digits with a fixed number of decimals and a true minus; half-way goes away from zero. What rounds to
 * zero carries no sign.
 */
export const decimalFigure = (value: Fraction, decimals: number): string => {
  const rounded = roundDecimal(value, decimals);
  const size = rounded.over < 0n ? -rounded.over : rounded.over;
  const digits = ((size * 10n ** BigInt(decimals)) / rounded.under).toString().padStart(decimals + 1, '0');
  const cut = digits.length - decimals;
  const figure = decimals === 0 ? digits : `${digits.slice(0, cut)}.${digits.slice(cut)}`;
  return rounded.over < 0n ? `${MINUS}${figure}` : figure;
};
