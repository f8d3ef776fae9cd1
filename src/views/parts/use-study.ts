import { useCallback, useState, useSyncExternalStore } from 'react';
import { deskOf } from '../../session/studies/desk.ts';
import { type AnswerOf, keyOf, type StudyCall, type StudyName } from '../../session/studies/registry.ts';
import { studiedPlan } from '../../session/studies/studied-plan.ts';
import type { Report } from '../../session/study-desk.ts';
import type { Progress } from '../../studies/study.ts';
import { useLook, useReady, useSession } from '../use-session.ts';

export interface StudyState<T> {
  /** The newest answer to this question; it belongs to an earlier plan while `stale`. */
  readonly value: T | undefined;
  readonly stale: boolean;
  readonly progress: Progress | undefined;
  /** Why there is no answer, in one sentence. */
  readonly why: string | undefined;
}

const NOT_ASKED: Report<never> = { state: 'waiting' };
const listenToNothing = () => () => {};

interface Kept<T> {
  readonly key: string;
  readonly value: T;
}

/** A study of the open plan, made again whenever the plan or the question changes; undefined asks nothing. */
export function useStudy<N extends StudyName>(call: StudyCall<N> | undefined): StudyState<AnswerOf<N>> {
  type Answer = AnswerOf<N>;
  const session = useSession();
  const plan = useLook(studiedPlan);
  const ready = useReady();
  const asked = call === undefined || !ready ? undefined : deskOf(session).ask(plan, call);
  const key = call === undefined ? undefined : keyOf(call as StudyCall);
  const read = useCallback((): Report<Answer> => asked?.report() ?? NOT_ASKED, [asked]);
  const report = useSyncExternalStore(asked?.subscribe ?? listenToNothing, read);
  const [kept, keep] = useState<Kept<Answer>>();
  if (
    key !== undefined &&
    report.state === 'answered' &&
    (kept?.key !== key || kept.value !== report.value)
  ) {
    keep({ key, value: report.value });
  }
  const last = kept?.key === key ? kept?.value : undefined;
  return {
    value: report.state === 'answered' ? report.value : last,
    stale: report.state !== 'answered',
    progress: report.state === 'working' ? report.progress : undefined,
    why: report.state === 'failed' ? report.why : undefined,
  };
}
