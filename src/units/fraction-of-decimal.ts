import { type Fraction, fraction } from './fraction.ts';

const DECIMAL = /^(-?)(\d*)(?:\.(\d*))?(?:e([+-]?\d+))?$/;

/** The exact value of a plain decimal such as 25.4, -0.5 or 1e-7. Throws on any other text. */
export const fractionOfDecimal = (text: string): Fraction => {
  const parts = DECIMAL.exec(text);
  const digits = parts === null ? '' : `${parts[2]}${parts[3] ?? ''}`;
  if (parts === null || digits === '') {
    throw new RangeError(`A decimal was given as ${text}: it is digits with at most one point, as in 25.4.`);
  }
  const power = BigInt(parts[4] ?? '0') - BigInt(parts[3]?.length ?? 0);
  const whole = BigInt(`${parts[1]}${digits}`.replace(/^-/, '')) * (parts[1] === '-' ? -1n : 1n);
  return power >= 0n ? fraction(whole * 10n ** power, 1n) : fraction(whole, 10n ** -power);
};

/**
 * A double taken as the shortest decimal that names it, so that 0.79375 is the half-way point 1/32 in and not the
 * binary neighbour just beside it. Throws when the number is not finite.
 */
export const fractionOfNumber = (value: number): Fraction => fractionOfDecimal(String(value));
