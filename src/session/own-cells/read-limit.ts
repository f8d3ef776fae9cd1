import { cellNamed, limitNamed } from '../../plan/book.ts';
import type { OwnLimit, Plan } from '../../plan/plan.ts';
import { parseEntry } from '../../units/parse-entry.ts';

/** Texts of the fields of an own limit. */
export interface LimitDraft {
  readonly result: string;
  readonly low: string;
  readonly high: string;
  readonly near: string;
}

export type LimitRead =
  | { readonly ok: true; readonly limit: OwnLimit }
  | { readonly ok: false; readonly why: string };

interface Judgeable {
  readonly label: string;
  readonly unit: string;
}

/** What of a plan can have a limit of one's own: name, label and unit. */
export function judgeable(plan: Plan, name: string): Judgeable | undefined {
  return cellNamed(name) ?? plan.ownCells.find((cell) => cell.name === name);
}

/** A name that no limit has yet; owners see the result's label in its place. */
export function limitNameFor(plan: Plan, result: string): string {
  const isTaken = (name: string): boolean =>
    limitNamed(name) !== undefined || plan.limits.some((it) => it.name === name);
  const stem = `${result.slice(0, 56)}_own`;
  for (let n = 1; ; n++) {
    const name = n === 1 ? stem : `${stem}_${n}`;
    if (!isTaken(name)) return name;
  }
}

export type BoundRead =
  | { readonly ok: true; readonly value: number | undefined }
  | { readonly ok: false; readonly why: string };

const WHAT = { low: 'The low bound', high: 'The high bound', near: 'The near band' } as const;

/** One bound of a limit on a result, as typed: a bare length is in the unit shown; nothing typed is no bound. */
export function readBound(plan: Plan, result: string, side: keyof typeof WHAT, typed: string): BoundRead {
  const it = judgeable(plan, result);
  if (it === undefined) return { ok: false, why: 'Choose the result that this limit judges.' };
  const entry = parseEntry(typed, {
    name: `${WHAT[side]} of ${it.label}`,
    kind: it.unit === 'mm' ? 'length' : 'number',
    unit: it.unit === '' ? '–' : it.unit,
    bare: plan.units === 'in' ? 'in' : 'mm',
  });
  if (!entry.ok) return entry;
  return { ok: true, value: !entry.empty && typeof entry.value === 'number' ? entry.value : undefined };
}

/** What was typed for a new limit of one's own; an empty near band is none. */
export function readLimit(plan: Plan, draft: LimitDraft): LimitRead {
  const { result } = draft;
  const low = readBound(plan, result, 'low', draft.low);
  if (!low.ok) return low;
  const high = readBound(plan, result, 'high', draft.high);
  if (!high.ok) return high;
  const near = readBound(plan, result, 'near', draft.near);
  if (!near.ok) return near;
  if (low.value === undefined && high.value === undefined) {
    return {
      ok: false,
      why: `Write a low bound for ${judgeable(plan, result)?.label}, a high one, or both.`,
    };
  }
  return {
    ok: true,
    limit: {
      name: limitNameFor(plan, result),
      result,
      ...(low.value === undefined ? {} : { low: low.value }),
      ...(high.value === undefined ? {} : { high: high.value }),
      near: near.value ?? 0,
    },
  };
}
