import { CAUTION } from '../../plan/caution.ts';
import type { Plan } from '../../plan/plan.ts';
import { standIns } from '../../plan/stand-ins.ts';

/** What a template file says of itself: which plan, what it rests on, and the cautions. */
export function aboutTemplates(plan: Plan, scenario: string | null): string {
  const count = standIns(plan, scenario).length;
  const rests = count === 0 ? 'no stand-ins' : `${count} stand-in${count === 1 ? '' : 's'}`;
  return `${plan.title}, ${scenario ?? 'base values'}. Millimetres, true size. Rests on ${rests}. ${CAUTION}`;
}
