import { useCallback, useState, useSyncExternalStore } from 'react';
import type { Session } from '../../session/session.ts';
import { type Report, StudyDesk, type StudyQuestion } from '../../session/study-desk.ts';
import type { Progress } from '../../studies/study.ts';
import { usePlan, useReady, useSession } from '../use-session.ts';

export interface StudyState<T> {
  /** The newest answer to this question; it belongs to an earlier plan while `stale`. */
  readonly value: T | undefined;
  readonly stale: boolean;
  readonly progress: Progress | undefined;
  /** Why there is no answer, in one sentence. */
  readonly why: string | undefined;
}

const desks = new WeakMap<Session, StudyDesk>();

/** The one desk for all studies of a session, with a workbook apart from the live one. */
function deskOf(session: Session): StudyDesk {
  const known = desks.get(session);
  if (known !== undefined) return known;
  const made = new StudyDesk(() => {
    if (session.workbook === undefined) throw new Error('The formula engine is still loading.');
    return session.workbook.another();
  });
  desks.set(session, made);
  return made;
}

const NOT_ASKED: Report<never> = { state: 'waiting' };
const listenToNothing = () => () => {};

interface Kept<T> {
  readonly key: string;
  readonly value: T;
}

/** A study of the open plan, made again whenever the plan or the question's key changes; undefined asks nothing. */
export function useStudy<T>(question: StudyQuestion<T> | undefined): StudyState<T> {
  const session = useSession();
  const plan = usePlan();
  const ready = useReady();
  const asked = question === undefined || !ready ? undefined : deskOf(session).ask(plan, question);
  const read = useCallback((): Report<T> => asked?.report() ?? NOT_ASKED, [asked]);
  const report = useSyncExternalStore(asked?.subscribe ?? listenToNothing, read);
  const [kept, keep] = useState<Kept<T>>();
  if (
    question !== undefined &&
    report.state === 'answered' &&
    (kept?.key !== question.key || kept.value !== report.value)
  ) {
    keep({ key: question.key, value: report.value });
  }
  const last = kept?.key === question?.key ? kept?.value : undefined;
  return {
    value: report.state === 'answered' ? report.value : last,
    stale: report.state !== 'answered',
    progress: report.state === 'working' ? report.progress : undefined,
    why: report.state === 'failed' ? report.why : undefined,
  };
}
