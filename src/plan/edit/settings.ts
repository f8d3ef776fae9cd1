import { inputNamed } from '../book.ts';
import { nameRefusal, tidyName } from '../name-refusal.ts';
import type { Plan, Units } from '../plan.ts';
import { linesRefusal } from '../text-refusal.ts';
import { lockAsDrilled } from './drilled.ts';
import { type Edited, edited, refuse } from './edited.ts';

/**
 * Marks a choice as fixed because its holes are drilled, or takes the mark off. Where it was read as fitted, that is
 * what is locked.
 */
export function setLocked(plan: Plan, name: string, locked: boolean): Edited {
  const cell = inputNamed(name);
  if (cell === undefined) return refuse(`There is no input named ${name}.`);
  if (cell.kind !== 'choice') {
    return refuse(`${cell.label} is read off the boat or the gear, not chosen, so it cannot be locked.`);
  }
  if (plan.locked.has(name) === locked) return edited(plan);
  if (locked && plan.fit.fitted.has(name)) return lockAsDrilled(plan, [name], {});
  const rest = [...plan.locked].filter((it) => it !== name);
  return edited({ ...plan, locked: new Set(locked ? [...rest, name] : rest) });
}

export const setUnits = (plan: Plan, units: Units): Edited =>
  edited(plan.units === units ? plan : { ...plan, units });

export function setTitle(plan: Plan, title: string): Edited {
  const tidy = tidyName(title);
  const why = nameRefusal('a plan', tidy);
  if (why !== undefined) return refuse(why);
  return edited(plan.title === tidy ? plan : { ...plan, title: tidy });
}

export function setNotes(plan: Plan, notes: string): Edited {
  const why = linesRefusal('The text of the notes', notes);
  if (why !== undefined) return refuse(why);
  return edited(plan.notes === notes ? plan : { ...plan, notes });
}
