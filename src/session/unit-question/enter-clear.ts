import { inputNamed } from '../../plan/book.ts';
import type { InputCell } from '../../plan/template.ts';
import type { Session } from '../session.ts';
import { type Bare, inUnit, type UnitDoubt, unitDoubt } from './unit-doubt.ts';
import { leftWhy, unitQuestionsOf } from './unit-questions.ts';

/** The unit of a bare length in the open plan. */
export const bareOf = (session: Session): Bare => (session.plan.units === 'in' ? 'in' : 'mm');

/** Whether what is typed for an input may be meant in the other unit. */
export const doubtOf = (
  { name, label, unit, usual }: InputCell,
  typed: string,
  meant: Bare,
): UnitDoubt | undefined => unitDoubt({ key: name, label, unit, usual }, typed, meant);

/** The same in an open plan, where what would be refused as it stands is in no doubt. */
export function doubtIn(session: Session, cell: InputCell, typed: string): UnitDoubt | undefined {
  const doubt = doubtOf(cell, typed, bareOf(session));
  return doubt !== undefined && session.takes<string>(cell.name, typed) ? doubt : undefined;
}

/** Puts in what a person typed for an input, once it is clear which unit it is in; whether that is asked first. */
export function enterClear(session: Session, name: string, typed: string): boolean {
  const cell = inputNamed(name);
  const meant = bareOf(session);
  const doubt = cell === undefined ? undefined : doubtIn(session, cell, typed);
  return unitQuestionsOf(session).whenClear({
    typed: [typed],
    doubts: doubt === undefined ? [] : [doubt],
    meant,
    put: (unit) => session.enter(name, unit === meant ? typed : inUnit(typed, unit)),
    leave: () => {
      if (doubt !== undefined) session.refuse(name, typed, leftWhy(doubt));
    },
  });
}
