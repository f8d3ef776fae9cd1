import type { Units } from '../plan/plan.ts';
import { formatLength } from '../units/format-length.ts';
import { formatNumber } from '../units/format-number.ts';
import type { Marked } from './marked.ts';

/** A length as every page and sheet shows it. */
export const length = (mm: number, units: Units): string => formatLength(mm, { unit: units });

/** A depth of a millimetre or two, to the 64th of an inch. */
export const depth = (mm: number, units: Units): string => formatLength(mm, { unit: units, fraction: 64 });

/** What a rounding adds, with its sign: `+0.3`, `−0.2`, `0.0`. */
export function signed(value: number): string {
  const text = formatNumber(value, 'mm', 1).replace(' mm', '');
  return value > 0 && !text.startsWith('0.0') ? `+${text}` : text.replace(/^−0\.0$/, '0.0');
}

const figure = (mm: number): string => `${mm < 0 ? '−' : ''}${Math.abs(mm)}`;

/** Words that stay on one line. */
export const together = (words: string): string => words.replaceAll(' ', '\u00a0');

/** The same, but for what stands in brackets or after a comma: that may go to the next line. */
export const byParts = (words: string): string =>
  together(words).replaceAll('\u00a0(', ' (').replaceAll(',\u00a0', ', ');

/** A mark as it is read off the tape. */
export const tapeWords = ({ mm, inches }: Marked, units: Units): string =>
  units === 'in' ? `${inches} in` : units === 'mm' ? `${figure(mm)} mm` : `${figure(mm)} mm (${inches} in)`;

/** A mark as it is read off the tape, with what its rounding adds in mm. */
export function markWords({ mm, mmOff, inches, inchesOff }: Marked, units: Units): string {
  const metric = `${together(`${figure(mm)} mm`)} (${signed(mmOff)})`;
  const imperial = `${together(`${inches} in`)} (${signed(inchesOff)})`;
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
