import { cellNamed } from './book.ts';
import { type Plan, readingOf } from './plan.ts';
import { tableNamed } from './tables.ts';

const WORDS = /[A-Za-z_][A-Za-z0-9_]*/g;

/** The formula of a cell in a scenario; undefined for a cell that holds a value, and for a table. */
function formulaOf(plan: Plan, name: string, scenario: string | null): string | undefined {
  const cell = cellNamed(name);
  if (cell?.kind === 'result') return cell.formula;
  if (cell !== undefined) return readingOf(plan, name, scenario)?.formula;
  return plan.ownCells.find((it) => it.name === name)?.formula;
}

/**
 * Everything with a value of its own that a cell is worked out from, through every formula between: inputs, own cells
 * and the survey's tables, by name.
 */
export function sourcesOf(plan: Plan, start: string, scenario: string | null): ReadonlySet<string> {
  const seen = new Set([start]);
  const sources = new Set<string>();
  for (const name of seen) {
    const formula = formulaOf(plan, name, scenario);
    if (formula === undefined) sources.add(name);
    for (const [word] of (formula ?? '').matchAll(WORDS)) {
      const used = word.toLowerCase();
      const isKnown =
        cellNamed(used) !== undefined ||
        tableNamed(used) !== undefined ||
        plan.ownCells.some((it) => it.name === used);
      if (isKnown) seen.add(used);
    }
  }
  return sources;
}
