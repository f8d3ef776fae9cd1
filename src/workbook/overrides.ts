import { inputNamed } from '../plan/book.ts';
import { type Plan, type Reading, readingOf, type Value } from '../plan/plan.ts';
import type { Content } from './engine.ts';
import { clashWith, enterText, enterValue, notAnInput } from './enter.ts';

export type Overrides =
  | { readonly ok: true; readonly contents: ReadonlyMap<string, Content> }
  | { readonly ok: false; readonly why: string };

const no = (why: string): Overrides => ({ ok: false, why });

const isValue = (value: unknown): value is Value =>
  value === null || typeof value === 'number' || typeof value === 'boolean' || typeof value === 'string';

/**
 * Values put over a plan's scenario for one evaluation, texts as a person types them (lengths bare in mm). An own cell
 * that holds a plain number takes another. The first that cannot be, alone or together with the rest, refuses all.
 */
export function readOverrides(
  entries: Iterable<readonly [string, unknown]>,
  plan: Plan,
  scenario: string | null,
): Overrides {
  const readings = new Map<string, Reading>();
  const own = new Map<string, number>();
  for (const [name, value] of entries) {
    const cell = inputNamed(name);
    const mine = plan.ownCells.find((it) => it.name === name);
    if (mine !== undefined) {
      const number = typeof value === 'string' && value.trim() !== '' ? Number(value) : value;
      if (mine.formula !== undefined) return no(`${name} follows its own formula and cannot be set.`);
      if (typeof number !== 'number' || !Number.isFinite(number)) {
        return no(`${name} is a cell of your own; it takes a plain number, not “${String(value)}”.`);
      }
      own.set(name, number);
      continue;
    }
    if (cell === undefined) return no(notAnInput(name) ?? '');
    if (!isValue(value)) return no(`${cell.label} (${name}) is one value, not a list.`);
    const before = readingOf(plan, name, scenario);
    const entered =
      typeof value === 'string'
        ? enterText(cell, value, 'mm', plan, before)
        : enterValue(cell, value, before);
    if (!entered.ok) return no(entered.why);
    readings.set(name, entered.reading);
  }
  const why = clashWith(readings, (name) => readingOf(plan, name, scenario)?.value ?? null);
  if (why !== undefined) return no(why);
  const contents = new Map<string, Content>(own);
  for (const [name, { value, formula }] of readings) {
    contents.set(name, formula === undefined ? value : { formula });
  }
  return { ok: true, contents };
}
