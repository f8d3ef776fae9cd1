import type { Fraction } from './fraction.ts';

const KEPT_BITS = 72;
const LARGEST_EXPONENT = 1030;

const bitLength = (whole: bigint): number => whole.toString(16).length * 4;

/**
 * The double nearest to a fraction, ties to even; Infinity where it is too large.
 * Exact to the last bit for sizes from 1e-300 up: below that a double has fewer bits, and nothing here measures it.
 */
export const numberOfFraction = (a: Fraction): number => {
  if (a.over === 0n) return 0;
  const size = a.over < 0n ? -a.over : a.over;
  const exponent = bitLength(size) - bitLength(a.under);
  const sign = a.over < 0n ? -1 : 1;
  if (exponent > LARGEST_EXPONENT) return sign * Number.POSITIVE_INFINITY;
  const shift = BigInt(KEPT_BITS - exponent);
  const top = shift > 0n ? size << shift : size;
  const bottom = shift < 0n ? a.under << -shift : a.under;
  // A remainder only matters as "a little more": one low bit says so, far below the bits that are kept.
  const quotient = (top / bottom) * 2n + (top % bottom === 0n ? 0n : 1n);
  return sign * Number(quotient) * 2 ** (exponent - KEPT_BITS - 1);
};
