import type { Fraction } from './fraction.ts';
import { fractionOfDecimal } from './fraction-of-decimal.ts';
import { Refusal } from './refusal.ts';

/** Far outside what a double holds, near enough that the exact power of ten stays cheap. */
const LARGEST_POWER = 1000n;

const THOUSANDS = /^[1-9]\d{0,2}(?:,\d{3})+$/;

const withoutTail = (decimal: string): string =>
  decimal.includes('.') ? decimal.replace(/\.?0*$/, '') : decimal;

const GROUPED = /^\d{1,3}(?:,\d{3})+(?:\.\d+)?$|^\d{1,3}(?:\.\d{3})+(?:,\d+)?$/;

const ungrouped = (mantissa: string): string => {
  const group = /[.,]/.exec(mantissa)?.[0] ?? '';
  return mantissa.replaceAll(group, '').replace(',', '.');
};

const severalSeparators = (mantissa: string): Refusal =>
  GROUPED.test(mantissa)
    ? new Refusal(`thousands are written without a separator; write ${ungrouped(mantissa)}`)
    : new Refusal('it holds more than one decimal sign');

const plainMantissa = (mantissa: string): string | Refusal => {
  const separators = mantissa.replace(/\d/g, '');
  if (separators.length === mantissa.length) return new Refusal('it holds no number');
  if (THOUSANDS.test(mantissa) && separators.length === 1) {
    const decimal = withoutTail(mantissa.replace(',', '.'));
    return new Refusal(`its comma can be read two ways; write ${mantissa.replace(',', '')} or ${decimal}`);
  }
  if (separators.length > 1) return severalSeparators(mantissa);
  if (/[.,]$/.test(mantissa))
    return new Refusal(`it stops at the decimal sign; write ${mantissa.slice(0, -1)}`);
  return mantissa.replace(',', '.');
};

/**
 * The exact value of digits with a decimal point or comma and a power of ten, as typed: 4, 1.5, 1,5, .5, 1e3.
 * Refuses whatever looks like grouped thousands, and powers no double can hold.
 */
export const readDecimal = (typed: string): Fraction | Refusal => {
  const [mantissa = '', power = '0'] = typed.replace('−', '-').toLowerCase().split('e');
  const plain = plainMantissa(mantissa);
  if (plain instanceof Refusal) return plain;
  const exponent = BigInt(power.replace(/^[+-]/, '')) * (power.startsWith('-') ? -1n : 1n);
  if (!/[1-9]/.test(plain)) return fractionOfDecimal('0');
  if (exponent > LARGEST_POWER) return new Refusal('it is larger than can be counted with here');
  if (exponent < -LARGEST_POWER) return new Refusal('it is smaller than can be counted with here; write 0');
  return fractionOfDecimal(`${plain}e${exponent}`);
};
