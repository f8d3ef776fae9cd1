import type { Plan } from '../../plan/plan.ts';
import { parseEntry } from '../../units/parse-entry.ts';
import { isCellName } from '../../workbook/contents.ts';
import { readFormula } from '../../workbook/formula.ts';

/** What an own cell is to hold. */
export type Content =
  | { readonly ok: true; readonly value: number | null; readonly formula?: string }
  | { readonly ok: false; readonly why: string };

/**
 * What was typed for an own cell: a formula after =, else a number in the cell's own unit. `label` is what the cell is
 * called in a refusal.
 */
export function readContent(plan: Plan, typed: string, label: string, unit: string): Content {
  const text = typed.trim();
  if (text.startsWith('=')) {
    const read = readFormula(text, (name) => isCellName(name, plan));
    return 'why' in read ? { ok: false, why: read.why } : { ok: true, value: null, formula: text };
  }
  const kind = unit === 'mm' ? 'length' : 'number';
  const entry = parseEntry(text, { name: label, kind, unit: unit === '' ? '–' : unit, bare: 'mm' });
  if (!entry.ok) return entry;
  return { ok: true, value: !entry.empty && typeof entry.value === 'number' ? entry.value : null };
}
