import { parseEntry } from '../../units/parse-entry.ts';
import type { Reading } from '../plan.ts';
import type { InputCell } from '../template.ts';

/** Relative difference up to which a text still gives a value: reading a text anew may round its last digit otherwise. */
const CLOSE = 1e-9;

const close = (a: number, b: number): boolean =>
  Math.abs(a - b) <= CLOSE * Math.max(Math.abs(a), Math.abs(b));

/** Whether the text typed for an input says what its value is, so that editing it would not change it unseen. */
export function typedAgrees(cell: InputCell, { typed, value, formula, unit }: Reading): boolean {
  if (typed === undefined) return true;
  if (formula !== undefined) return typed.trim() === formula.trim();
  const entry = parseEntry(typed, {
    name: cell.label,
    kind: cell.type === 'number' && cell.unit === 'mm' ? 'length' : cell.type,
    unit: cell.unit,
    words: cell.words,
    bare: unit === 'in' ? 'in' : 'mm',
  });
  if (!entry.ok) return false;
  if (entry.empty) return value === null;
  return typeof entry.value === 'number' && typeof value === 'number'
    ? close(entry.value, value)
    : entry.value === value;
}
