import type { CellName } from '../plan/names.ts';
import type { Value } from '../plan/plan.ts';

/** Reads any cell's value in base units; undefined or null when it is empty or cannot be computed. */
export type Ask = (name: CellName) => Value | undefined;

/** One number, or undefined when it is missing. */
export function numberOf(ask: Ask, name: CellName): number | undefined {
  const value = ask(name);
  return typeof value === 'number' && Number.isFinite(value) ? value : undefined;
}

/** The named numbers in order, or the names that are missing. */
export function numbersOf<const Names extends readonly CellName[]>(
  ask: Ask,
  ...names: Names
): { readonly got: { [Key in keyof Names]: number } } | { readonly missing: readonly CellName[] } {
  const got = names.map((name) => numberOf(ask, name));
  const missing = names.filter((_, i) => got[i] === undefined);
  return missing.length > 0 ? { missing } : { got: got as { [Key in keyof Names]: number } };
}
