import { limitRefusal } from '../limit-refusal.ts';
import type { OwnLimit, Plan } from '../plan.ts';
import { type Edited, edited, refuse } from './edited.ts';

/** Puts an own limit in place of the one with its name, or adds it at the end. */
export function setOwnLimit(plan: Plan, limit: OwnLimit): Edited {
  const why = limitRefusal(limit, (name) => plan.ownCells.some((cell) => cell.name === name));
  if (why !== undefined) return refuse(why);
  const known = plan.limits.some((it) => it.name === limit.name);
  const limits = known
    ? plan.limits.map((it) => (it.name === limit.name ? limit : it))
    : [...plan.limits, limit];
  return edited({ ...plan, limits });
}

export function deleteOwnLimit(plan: Plan, name: string): Edited {
  return plan.limits.some((it) => it.name === name)
    ? edited({ ...plan, limits: plan.limits.filter((it) => it.name !== name) })
    : refuse(`There is no limit of your own named ${name}.`);
}
