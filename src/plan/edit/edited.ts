import { CAPS } from '../caps.ts';
import type { Plan } from '../plan.ts';
import { rowsOf } from '../rows-of.ts';

/** What an edit gives: a new plan, or one sentence why there is none. */
export type Edited =
  | { readonly ok: true; readonly plan: Plan }
  | { readonly ok: false; readonly why: string };

export const refuse = (why: string): Edited => ({ ok: false, why });

/** A plan that an edit made, as long as it stays within what a file may hold. */
export function edited(plan: Plan): Edited {
  const rows = rowsOf(plan);
  return rows <= CAPS.rows
    ? { ok: true, plan }
    : refuse(`A plan may have ${CAPS.rows} rows over all its lists; this would make it ${rows}.`);
}
