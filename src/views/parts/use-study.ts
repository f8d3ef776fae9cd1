import { useEffect, useState } from 'react';
import type { Session } from '../../session/session.ts';
import { evaluatorFor, runSliced } from '../../session/study-desk.ts';
import type { Evaluator } from '../../studies/evaluator.ts';
import type { Progress, Study } from '../../studies/study.ts';
import type { Workbook } from '../../workbook/workbook.ts';
import { usePlan, useReady, useSession } from '../use-session.ts';

export interface StudyState<T> {
  /** The newest answer; it belongs to an earlier plan while `stale`. */
  readonly value: T | undefined;
  readonly stale: boolean;
  readonly progress: Progress | undefined;
  readonly why: string | undefined;
}

const desks = new WeakMap<Session, Workbook>();

/** One workbook for all studies of a session, apart from the live one. */
function deskOf(session: Session): Workbook {
  const known = desks.get(session);
  if (known !== undefined) return known;
  const live = session.workbook;
  if (live === undefined) throw new Error('The formula engine is still loading.');
  const made = live.another();
  desks.set(session, made);
  return made;
}

/**
 * A study of the open plan, run again whenever the plan or what is asked changes. `make` must be the same function as
 * long as the question is the same; undefined asks nothing.
 */
export function useStudy<T>(make: ((evaluator: Evaluator) => Study<T>) | undefined): StudyState<T> {
  const session = useSession();
  const plan = usePlan();
  const ready = useReady();
  const [state, setState] = useState<StudyState<T> & { readonly of: unknown }>({
    value: undefined,
    stale: true,
    progress: undefined,
    why: undefined,
    of: undefined,
  });
  useEffect(() => {
    if (make === undefined || !ready) return;
    return runSliced(() => make(evaluatorFor(deskOf(session), plan)), {
      onProgress: (progress) => setState((now) => ({ ...now, progress })),
      onDone: (value) => setState({ value, stale: false, progress: undefined, why: undefined, of: plan }),
      onFailed: (why) => setState((now) => ({ ...now, why, progress: undefined, of: plan })),
    });
  }, [make, session, plan, ready]);
  return { ...state, stale: state.stale || state.of !== plan };
}
