import { type Fault, isFault, isTable, NOT_A_NUMBER, type Scalar, WRONG_TYPE } from './scalar.ts';

const NUMERIC = /^[+-]?(?:\.\d+|\d+(?:\.\d*)?)(?:[eE][+-]?\d+)?$/;

const numberIn = (text: string): number | undefined => (NUMERIC.test(text) ? Number(text) : undefined);

function numberOfText(text: string): number | undefined {
  if (text === '') return 0;
  const trimmed = text.trim();
  if (trimmed.endsWith('%')) {
    const share = numberIn(trimmed.slice(0, -1).trim());
    if (share !== undefined) return share / 100;
  }
  return numberIn(trimmed);
}

/** A value where the engine needs a number. A text's number may be infinite: only what is made of it is checked. */
export function toNumber(value: Scalar): number | Fault {
  if (typeof value === 'number' || isFault(value)) return value;
  if (value === null) return 0;
  if (typeof value === 'boolean') return Number(value);
  if (isTable(value)) return NOT_A_NUMBER;
  return numberOfText(value) ?? NOT_A_NUMBER;
}

/** A value where the engine needs yes or no. */
export function toBoolean(value: Scalar): boolean | Fault {
  if (typeof value === 'boolean' || isFault(value)) return value;
  if (value === null) return false;
  if (typeof value === 'number') return value !== 0;
  if (isTable(value)) return WRONG_TYPE;
  const upper = value.toUpperCase();
  if (upper === 'TRUE') return true;
  return upper === 'FALSE' || upper === '' ? false : WRONG_TYPE;
}

/** A value where the engine needs a text. */
export function toText(value: Scalar): string | Fault {
  if (typeof value === 'string' || isFault(value)) return value;
  if (value === null) return '';
  if (isTable(value)) return WRONG_TYPE;
  return typeof value === 'number' ? value.toString() : value ? 'TRUE' : 'FALSE';
}
