import { inputNamed } from '../../plan/book.ts';
import { setFitted } from '../../plan/edit.ts';
import type { Reading } from '../../plan/plan.ts';
import { clashWith, enterText } from '../../workbook/enter.ts';
import type { Done, Session } from '../session.ts';

export interface ReadBy {
  readonly who: string;
  readonly when: string;
}

const noted = ({ who, when }: ReadBy) => ({
  ...(who === '' ? {} : { who }),
  ...(when === '' ? {} : { when }),
});

/** Puts a reading as fitted where it replaces the planned value; an empty text goes back to the plan. */
export function enterFitted(session: Session, name: string, typed: string, by: ReadBy): Done {
  const cell = inputNamed(name);
  if (cell === undefined) return { ok: false, why: `There is no input named ${name}.` };
  const label = `As fitted: ${cell.label}`;
  if (typed.trim() === '') return session.edit(label, (plan) => setFitted(plan, name, undefined));
  const { plan } = session;
  const bare = plan.units === 'in' ? 'in' : 'mm';
  const entered = enterText(cell, typed, bare, plan, plan.fit.fitted.get(name));
  if (!entered.ok) return entered;
  return putFitted(session, name, { ...entered.reading, origin: 'reading', ...noted(by) });
}

/** Puts a reading that was worked out, such as a lean from the bob. */
export function putFitted(session: Session, name: string, reading: Reading): Done {
  const { plan } = session;
  const together = new Map([...plan.fit.fitted, [name, reading]]);
  const why = clashWith(together, (other) => session.value(other));
  if (why !== undefined) return { ok: false, why };
  const label = inputNamed(name)?.label ?? name;
  return session.edit(`As fitted: ${label}`, (it) => setFitted(it, name, reading));
}
