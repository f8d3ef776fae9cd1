import { functionNamed } from '../calc/catalogue.ts';
import type { LibraryFunction } from '../calc/record.ts';
import { cellNamed } from '../plan/book.ts';
import type { Plan, Value } from '../plan/plan.ts';

/** One piece of a formula read aloud: plain text, or a cell by its label with its value. */
export type BackingPiece =
  | { readonly kind: 'text'; readonly text: string }
  | {
      readonly kind: 'cell';
      readonly name: string;
      readonly label: string;
      readonly value: Value;
      readonly unit: string;
    };

/** What stands behind one number. */
export interface Backing {
  readonly formula: string;
  readonly pieces: readonly BackingPiece[];
  /** Library functions used, each once, for their formula in words and their source. */
  readonly functions: readonly LibraryFunction[];
}

const WORDS = /[A-Za-z_][A-Za-z0-9_.]*(\s*\()?/g;

/** Breaks a formula into words and cells, with the cells' values put in. */
export function backingOf(formula: string, plan: Plan, valueAt: (name: string) => Value): Backing {
  const pieces: BackingPiece[] = [];
  const functions = new Map<string, LibraryFunction>();
  let at = 1;
  for (const match of formula.matchAll(WORDS)) {
    const word = match[0];
    if (match[1] !== undefined) {
      const record = functionNamed(word.slice(0, -match[1].length).toUpperCase());
      if (record !== undefined) functions.set(record.id, record);
      continue;
    }
    const name = word.toLowerCase();
    const own = plan.ownCells.find((cell) => cell.name === name);
    const cell = cellNamed(name) ?? own;
    if (cell === undefined) continue;
    if (match.index > at) pieces.push({ kind: 'text', text: formula.slice(at, match.index) });
    pieces.push({ kind: 'cell', name, label: cell.label, value: valueAt(name), unit: cell.unit });
    at = match.index + word.length;
  }
  if (at < formula.length) pieces.push({ kind: 'text', text: formula.slice(at) });
  return { formula, pieces, functions: [...functions.values()] };
}
