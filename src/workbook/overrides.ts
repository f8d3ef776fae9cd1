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
 * Values put over a plan's scenario for one evaluation, texts as a person types them (lengths bare in mm). The first
 * that cannot be, alone or together with the rest, refuses all.
 */
export function readOverrides(
  entries: Iterable<readonly [string, unknown]>,
  plan: Plan,
  scenario: string | null,
): Overrides {
  const readings = new Map<string, Reading>();
  for (const [name, value] of entries) {
    const cell = inputNamed(name);
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
  const contents = new Map<string, Content>();
  for (const [name, { value, formula }] of readings) {
    contents.set(name, formula === undefined ? value : { formula });
  }
  return { ok: true, contents };
}
