import type { CellName } from '../plan/names.ts';

/** What a scene reads: inputs and results by name in base units; null when empty or not to be computed. */
export interface Values {
  number(name: CellName): number | null;
  flag(name: CellName): boolean | null;
}

/** Lengths past 10 km are no lengths of a boat; they would only upset the drawing's arithmetic. */
const LARGEST = 1e7;

/** One number, or null when it is missing or no number a drawing can use. */
export function number(values: Values, name: CellName): number | null {
  const value = values.number(name);
  return value !== null && Number.isFinite(value) && Math.abs(value) < LARGEST ? value : null;
}

/** The named numbers in order, or null when one of them is missing. */
export function need<const Names extends readonly CellName[]>(
  values: Values,
  ...names: Names
): { [Key in keyof Names]: number } | null {
  const found: number[] = [];
  for (const name of names) {
    const value = number(values, name);
    if (value === null) return null;
    found.push(value);
  }
  return found as { [Key in keyof Names]: number };
}
