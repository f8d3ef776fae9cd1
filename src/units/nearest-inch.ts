import { MINUS } from './decimal-figure.ts';
import { type Fraction, fraction, multiply, roundHalfAway } from './fraction.ts';

/** The parts an inch is divided into on a tape. */
export type InchParts = 16 | 32 | 64;

/** Millimetres as inches: 1 in = 25.4 mm exactly (NIST SP 811, 2008, B.8). */
export const INCH_PER_MM: Fraction = fraction(10n, 254n);

/** The nearest whole number of 16ths, 32nds or 64ths of an inch; half-way goes away from zero. */
export const nearestInch = (inches: Fraction, parts: InchParts): Fraction => {
  const under = BigInt(parts);
  return fraction(roundHalfAway(multiply(inches, fraction(under, 1n))), under);
};

/** A fraction of inches as it is read off a tape: `12 9⁄16`, `9⁄16`, `−2 3⁄8`, `0`, with the fraction slash U+2044. */
export const inchFigure = (inches: Fraction): string => {
  const size = inches.over < 0n ? -inches.over : inches.over;
  const [whole, over] = [size / inches.under, size % inches.under];
  const part = over === 0n ? '' : `${over}⁄${inches.under}`;
  const figure = whole === 0n && part !== '' ? part : `${whole}${part === '' ? '' : ` ${part}`}`;
  return inches.over < 0n ? `${MINUS}${figure}` : figure;
};
