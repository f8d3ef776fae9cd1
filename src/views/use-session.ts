import { createContext, useCallback, useContext, useSyncExternalStore } from 'react';
import type { Known } from '../plan/known.ts';
import type { LimitName } from '../plan/names.ts';
import type { Plan, Reading } from '../plan/plan.ts';
import type { Draft, Session } from '../session/session.ts';
import type { Answer } from '../workbook/engine.ts';
import type { Judgement, LimitAnswer } from '../workbook/judged.ts';

export const SessionContext = createContext<Session | undefined>(undefined);

/** The open plan's session. */
export function useSession(): Session {
  const session = useContext(SessionContext);
  if (session === undefined) throw new Error('A view stands outside the session it shows.');
  return session;
}

/** Anything read off the session; the component renders again only when what `look` gives is another object. */
export function useLook<T>(look: (session: Session) => T): T {
  const session = useSession();
  const snapshot = useCallback(() => look(session), [look, session]);
  return useSyncExternalStore(session.subscribe, snapshot);
}

const lookAtPlan = (session: Session): Plan => session.plan;
const lookAtJudgement = (session: Session): Judgement => session.judgement;
const lookAtReady = (session: Session): boolean => session.ready;

export const usePlan = (): Plan => useLook(lookAtPlan);
export const useJudgement = (): Judgement => useLook(lookAtJudgement);
export const useReady = (): boolean => useLook(lookAtReady);

/** The answer of one cell; undefined while the engine is loading. */
export const useAnswer = <N extends string>(name: N & Known<N>): Answer | undefined =>
  useLook(useCallback((session: Session) => session.answer(name as string), [name]));

export const useReading = <N extends string>(name: N & Known<N>): Reading | undefined =>
  useLook(useCallback((session: Session) => session.reading(name as string), [name]));

export const useDraft = <N extends string>(name: N & Known<N>): Draft | undefined =>
  useLook(useCallback((session: Session) => session.draft(name as string), [name]));

/** Whether the last edit changed a cell. */
export const useChanged = <N extends string>(name: N & Known<N>): boolean =>
  useLook(useCallback((session: Session) => session.changed.has(name), [name]));

export const useLimit = <N extends string>(name: N & Known<N, LimitName>): LimitAnswer | undefined =>
  useLook(useCallback((session: Session) => session.judgement.limits.find((it) => it.name === name), [name]));
