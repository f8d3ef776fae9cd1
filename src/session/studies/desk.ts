import type { Plan } from '../../plan/plan.ts';
import type { Session } from '../session.ts';
import { type Asked, StudyDesk } from '../study-desk.ts';
import { type AnswerOf, keyOf, type StudyCall, type StudyName, start } from './registry.ts';

/** Where a session's studies are asked for, wherever they are worked out. */
export interface Desk {
  ask<N extends StudyName>(plan: Plan, call: StudyCall<N>): Asked<AnswerOf<N>>;
}

/** A desk in the page itself, a slice at a time. */
class DeskHere implements Desk {
  readonly #desk: StudyDesk;

  constructor(desk: StudyDesk) {
    this.#desk = desk;
  }

  ask<N extends StudyName>(plan: Plan, call: StudyCall<N>): Asked<AnswerOf<N>> {
    return this.#desk.ask<AnswerOf<N>>(plan, {
      key: keyOf(call as StudyCall),
      urgent: call.urgent ?? false,
      make: (bench) => start(bench, call),
    });
  }
}

const desks = new WeakMap<Session, Desk>();

/** Gives a session the desk that its studies go to from now on. */
export const giveDesk = (session: Session, desk: Desk): void => {
  desks.set(session, desk);
};

/** The session's desk; one in the page itself when it was given none. */
export function deskOf(session: Session): Desk {
  const known = desks.get(session);
  if (known !== undefined) return known;
  const made = new DeskHere(
    new StudyDesk(() => {
      if (session.workbook === undefined) throw new Error('The formula engine is still loading.');
      return session.workbook.another();
    }),
  );
  desks.set(session, made);
  return made;
}
