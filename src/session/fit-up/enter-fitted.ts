import { fitQuestion } from '../../fitting/fit-tolerance.ts';
import { inputNamed } from '../../plan/book.ts';
import { lockAsDrilled as lockPlan, setFitted } from '../../plan/edit.ts';
import type { InputName } from '../../plan/names.ts';
import type { Reading } from '../../plan/plan.ts';
import { clashWith, type Entered, enterText } from '../../workbook/enter.ts';
import type { Done, Session } from '../session.ts';

export interface ReadBy {
  readonly who: string;
  readonly when: string;
}

export const noted = ({ who, when }: ReadBy) => ({
  ...(who === '' ? {} : { who }),
  ...(when === '' ? {} : { when }),
});

function enteredFitted(session: Session, name: InputName, typed: string): Entered | undefined {
  const cell = inputNamed(name);
  if (cell === undefined) return undefined;
  const { plan } = session;
  const bare = plan.units === 'in' ? 'in' : 'mm';
  return enterText(cell, typed, bare, plan, plan.fit.fitted.get(name));
}

/** What was planned, also after the reading has taken the plan's place. */
export const plannedOf = (session: Session, name: InputName) =>
  session.plan.fit.drilled.get(name)?.planned ?? session.value(name);

/** A question about a value as fitted that is unlike the plan; undefined where it may go in as it is. */
export function questionAbout(
  session: Session,
  name: InputName,
  value: Reading['value'],
): string | undefined {
  const cell = inputNamed(name);
  if (cell === undefined || session.plan.fit.fitted.get(name)?.value === value) return undefined;
  return fitQuestion(cell, plannedOf(session, name), value, session.plan.units);
}

/** The value of a text that was typed, where it is asked about. */
export function askedAbout(session: Session, name: InputName, typed: string): Reading['value'] | undefined {
  if (typed.trim() === '') return undefined;
  const entered = enteredFitted(session, name, typed);
  if (entered?.ok !== true) return undefined;
  const { value } = entered.reading;
  return questionAbout(session, name, value) === undefined ? undefined : value;
}

/**
 * Puts a reading as fitted where it replaces the planned value; an empty text goes back to the plan. A value that is
 * unlike the plan is refused with a question until it is `sure`.
 */
export function enterFitted(
  session: Session,
  name: InputName,
  typed: string,
  by: ReadBy,
  sure = false,
): Done {
  const cell = inputNamed(name);
  if (cell === undefined) return { ok: false, why: `There is no input named ${name}.` };
  const label = `As fitted: ${cell.label}`;
  if (typed.trim() === '') return session.edit(label, (plan) => setFitted(plan, name, undefined));
  const entered = enteredFitted(session, name, typed);
  if (entered === undefined || !entered.ok)
    return entered ?? { ok: false, why: `${cell.label} was not read.` };
  return putFitted(session, name, { ...entered.reading, origin: 'reading', ...noted(by) }, sure);
}

/** Puts a reading that was worked out, such as a lean from the bob. */
export function putFitted(session: Session, name: InputName, reading: Reading, sure = false): Done {
  const { plan } = session;
  const together = new Map([...plan.fit.fitted, [name as string, reading]]);
  const why = clashWith(together, (other) => session.value(other));
  if (why !== undefined) return { ok: false, why };
  const question = sure ? undefined : questionAbout(session, name, reading.value);
  if (question !== undefined) return { ok: false, why: question };
  const label = inputNamed(name)?.label ?? name;
  return session.edit(`As fitted: ${label}`, (it) => setFitted(it, name, reading));
}

/** Reads a choice as drilled just where it was planned. */
export function drilledAsPlanned(session: Session, name: InputName, by: ReadBy): Done {
  const planned = session.value(name);
  if (planned === null) return { ok: false, why: `${inputNamed(name)?.label ?? name} has no planned value.` };
  const { formula: _, typed: __, unit: ___, ...reading } = session.reading(name) ?? { origin: 'reading' };
  return putFitted(session, name, { ...reading, value: planned, origin: 'reading', ...noted(by) }, true);
}

/** Locks choices as they were drilled, with the readings taken into the plan. */
export const lockAsDrilled = (
  session: Session,
  names: readonly InputName[],
  title: string,
  by: ReadBy,
): Done => session.edit(`Lock as drilled: ${title}`, (plan) => lockPlan(plan, names, noted(by)));
