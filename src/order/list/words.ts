import type { Units } from '../../plan/plan.ts';
import { formatLength } from '../../units/format-length.ts';
import type { Marked } from '../marked.ts';

/** A length as the order shows it: tenths of a millimetre, sixteenths of an inch. */
export const length = (mm: number, units: Units): string =>
  formatLength(mm, { unit: units, ...(units === 'in' ? {} : { decimals: 1 }) }).replace(/\.0 mm/, ' mm');

/** A depth of a millimetre or two, to the 64th of an inch. */
export const depth = (mm: number, units: Units): string =>
  formatLength(mm, { unit: units, fraction: 64, ...(units === 'in' ? {} : { decimals: 1 }) });

const signed = (mm: number): string => {
  const text = Math.abs(mm).toFixed(1);
  return text === '0.0' ? '0' : `${mm < 0 ? '−' : '+'}${text}`;
};

const figure = (mm: number): string => `${mm < 0 ? '−' : ''}${Math.abs(mm)}`;

/** Words that stay on one line. */
export const together = (words: string): string => words.replaceAll(' ', '\u00a0');

/** A mark as it is read off the tape, with what its rounding adds in mm. */
export function markWords({ mm, mmOff, inches, inchesOff }: Marked, units: Units): string {
  const metric = together(`${figure(mm)} mm (${signed(mmOff)})`);
  const imperial = together(`${inches} in (${signed(inchesOff)})`);
  return units === 'mm' ? metric : units === 'in' ? imperial : `${metric}, ${imperial}`;
}

/** `4 bolts`, `1 bolt`. */
export const counted = (count: number, one: string, many = `${one}s`): string =>
  `${count} ${count === 1 ? one : many}`;

const inchParts = (inches: number): string => {
  const whole = Math.floor(inches);
  const quarters = Math.round((inches - whole) * 4);
  const part = ['', '1⁄4', '1⁄2', '3⁄4'][quarters] ?? '';
  return [whole === 0 && part !== '' ? '' : String(whole), part].filter((it) => it !== '').join(' ');
};

/** A length that is a whole number of quarters of an inch. */
export const quarterInches = (inches: number): string => `${inchParts(inches)} in`;
