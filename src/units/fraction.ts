/** An exact ratio of two whole numbers, reduced, the lower one above 0. */
export type Fraction = { readonly over: bigint; readonly under: bigint };

const greatestCommonDivisor = (a: bigint, b: bigint): bigint => {
  let [high, low] = [a < 0n ? -a : a, b < 0n ? -b : b];
  while (low !== 0n) [high, low] = [low, high % low];
  return high;
};

/** The reduced fraction over/under. Throws when the lower number is 0: a caller that takes text asks first. */
export const fraction = (over: bigint, under: bigint): Fraction => {
  if (under === 0n)
    throw new RangeError(`A fraction was given ${over} over 0: the number under the line is not 0.`);
  const divisor = under < 0n ? -greatestCommonDivisor(over, under) : greatestCommonDivisor(over, under);
  return { over: over / divisor, under: under / divisor };
};

export const add = (a: Fraction, b: Fraction): Fraction =>
  fraction(a.over * b.under + b.over * a.under, a.under * b.under);

export const negate = (a: Fraction): Fraction => ({ over: -a.over, under: a.under });

export const subtract = (a: Fraction, b: Fraction): Fraction => add(a, negate(b));

export const multiply = (a: Fraction, b: Fraction): Fraction => fraction(a.over * b.over, a.under * b.under);

/** Throws when b is 0. */
export const divide = (a: Fraction, b: Fraction): Fraction => fraction(a.over * b.under, a.under * b.over);

export const isWhole = (a: Fraction): boolean => a.under === 1n;

/** The nearest whole number; half-way goes away from zero, so that a length and its mirror image round alike. */
export const roundHalfAway = (a: Fraction): bigint => {
  const size = a.over < 0n ? -a.over : a.over;
  const rounded = (2n * size + a.under) / (2n * a.under);
  return a.over < 0n ? -rounded : rounded;
};

/** The greatest whole number that is not above a. */
export const floor = (a: Fraction): bigint => {
  const cut = a.over / a.under;
  return a.over < 0n && cut * a.under !== a.over ? cut - 1n : cut;
};
