import type { Edited } from '../../../src/plan/edit.ts';
import type { Plan } from '../../../src/plan/plan.ts';

/** The plan that an edit gave; a refusal fails the test with its sentence. */
export function planFrom(edited: Edited): Plan {
  if (!edited.ok) throw new Error(edited.why);
  return edited.plan;
}

/** The sentence that an edit was refused with. */
export function whyFrom(edited: Edited): string {
  if (edited.ok) throw new Error('The edit was not refused.');
  return edited.why;
}
