import type { JsonObject } from './json-object.ts';

/** One step from a version of the file to the next. Pure: it gets the document as read and gives a new one. */
export interface Migration {
  /** The version it takes; it gives this plus one. */
  readonly from: number;
  readonly run: (document: JsonObject) => JsonObject;
}

/** Every step there is, without a gap, from version 1 on. */
export const MIGRATIONS: readonly Migration[] = [
  // Version 2 keeps what was read and done while fitting, and may note something beside a survey table's row.
  { from: 1, run: (document) => ({ ...document, fit: { fitted: [], steps: [], handover: [] } }) },
  // Version 3 keeps why the work went on in spite of a stop, ticks taken off, and what was planned where a hole is drilled.
  {
    from: 2,
    run: (document) => ({
      ...document,
      fit: { ...(document.fit as JsonObject), drilled: [], went_on: [], unticked: [] },
    }),
  },
];

/** The version that a list of steps ends at. */
export const versionAfter = (steps: readonly Migration[]): number => steps.length + 1;

/** The version written now. */
export const CURRENT_VERSION = versionAfter(MIGRATIONS);

/** What is wrong with a list of steps; undefined when it runs from version 1 without a gap. */
export function gapIn(steps: readonly Migration[]): string | undefined {
  const at = steps.findIndex((step, i) => step.from !== i + 1);
  return at < 0
    ? undefined
    : `Step ${at + 1} takes version ${steps[at]?.from}; it should take version ${at + 1}.`;
}

export type Migrated =
  | { readonly ok: true; readonly document: JsonObject }
  | { readonly ok: false; readonly from: number };

/** A document brought from its version to the newest, one step after the other; or the step that failed. */
export function migrate(document: JsonObject, version: number, steps: readonly Migration[]): Migrated {
  let current = document;
  for (const step of steps.slice(version - 1)) {
    try {
      current = { ...step.run(current), version: step.from + 1 };
    } catch {
      return { ok: false, from: step.from };
    }
  }
  return { ok: true, document: current };
}
