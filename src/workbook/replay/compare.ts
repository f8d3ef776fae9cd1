import { OPTIONS } from '../engine-options.ts';
import { type Fault, isFault, type Scalar } from './scalar.ts';

/** The engine's own collation, with its defaults: neither case nor accents tell two texts apart. */
const collator = new Intl.Collator(OPTIONS.localeLang, {
  sensitivity: 'base',
  caseFirst: 'lower',
  ignorePunctuation: false,
});

const WIDER = 1 + OPTIONS.precisionEpsilon;

/** Two numbers as the engine compares them: within a share of 1e-13 they are the same. Negative, 0 or positive. */
export function compareNumbers(left: number, right: number): number {
  if (right >= 0 && left * WIDER >= right && left <= right * WIDER) return 0;
  if (right <= 0 && left * WIDER <= right && left >= right * WIDER) return 0;
  return left > right ? 1 : -1;
}

/** Values of different kinds stand in this order. */
const rank = (value: Scalar): number => {
  if (value === null) return 0;
  if (typeof value === 'number') return 1;
  return typeof value === 'string' ? 2 : 3;
};

const filled = (value: Scalar, other: Scalar): Scalar => {
  if (value !== null) return value;
  if (typeof other === 'string') return '';
  if (typeof other === 'number') return 0;
  return typeof other === 'boolean' ? false : null;
};

/** Two values that are no errors, as the engine orders them. */
export function compare(first: Scalar, second: Scalar): number {
  const left = filled(first, second);
  const right = filled(second, first);
  if (typeof left === 'string' && typeof right === 'string') return collator.compare(left, right);
  if (typeof left === 'number' && typeof right === 'number') return compareNumbers(left, right);
  if (typeof left === 'boolean' && typeof right === 'boolean') return Number(left) - Number(right);
  return rank(left) - rank(right);
}

/** Which of three outcomes of `compare` a sign holds for. */
export const HOLDS: Readonly<Record<string, (order: number) => boolean>> = {
  '=': (order) => order === 0,
  '<>': (order) => order !== 0,
  '<': (order) => order < 0,
  '<=': (order) => order <= 0,
  '>': (order) => order > 0,
  '>=': (order) => order >= 0,
};

/** A comparison of any two values: an error on the left, then one on the right, is handed on. */
export function compared(sign: string, left: Scalar, right: Scalar): boolean | Fault {
  if (isFault(left)) return left;
  if (isFault(right)) return right;
  return HOLDS[sign]?.(compare(left, right)) ?? false;
}
