import type { Plan } from '../../plan/plan.ts';

/** The last copy of a plan that was handed to the browser as a file. */
export interface Copy {
  readonly name: string;
  readonly plan: Plan;
}

/** What is said of the last copy since the window was opened. */
export function copyWords(copy: Copy | undefined, plan: Plan): string {
  if (copy === undefined) return 'No copy was saved since this window was opened.';
  const saved = `A copy was saved: ${copy.name}, where this browser puts its downloads.`;
  return copy.plan === plan ? saved : `${saved} The plan has changed since.`;
}
