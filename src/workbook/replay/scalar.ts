import type { Table } from '../../calc/record.ts';

/** A table that a function takes. */
export interface TableValue {
  readonly rows: Table;
}

/** An error of the formula engine: its kind, and its message, empty where it has none. */
export interface Fault {
  readonly fault: string;
  readonly message: string;
}

/** What a cell, or a part of a formula, can come to. null is the engine's empty value. */
export type Scalar = number | boolean | string | null | Fault | TableValue;

export const isFault = (value: Scalar): value is Fault =>
  typeof value === 'object' && value !== null && 'fault' in value;

export const isTable = (value: Scalar): value is TableValue =>
  typeof value === 'object' && value !== null && 'rows' in value;

export const NO_ROWS: TableValue = { rows: [] };

const fault = (kind: string, message = ''): Fault => ({ fault: kind, message });

export const noAnswer = (message: string): Fault => fault('NA', message);

/** The engine's own errors, with its own messages. */
export const DIVISION: Fault = fault('DIV_BY_ZERO');
export const NOT_FINITE: Fault = fault('NUM', 'NaN or infinite value encountered.');
export const NOT_A_NUMBER: Fault = fault('VALUE', 'Value cannot be coerced to number.');
export const WRONG_TYPE: Fault = fault('VALUE', 'Wrong type of argument.');
export const WRONG_COUNT: Fault = noAnswer('Wrong number of arguments.');
export const LOOP: Fault = fault('CYCLE');
export const unknownName = (name: string): Fault => fault('NAME', `Named expression ${name} not recognized.`);

/** What every part of a formula goes through: no infinite number, no negative zero. */
export function settled(value: Scalar): Scalar {
  if (typeof value !== 'number') return value;
  if (!Number.isFinite(value)) return NOT_FINITE;
  return value === 0 ? 0 : value;
}
