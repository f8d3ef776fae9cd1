import type { Plan } from '../../plan/plan.ts';
import type { Session } from '../../session/session.ts';
import { ReplayEvaluators } from '../../session/studies/evaluators.ts';
import type { Evaluators } from '../../studies/points.ts';
import type { Study } from '../../studies/study.ts';
import { usePlan, useSession } from '../use-session.ts';
import { type StudyState, useStudy } from './use-study.ts';

const made = new WeakMap<Session, ReplayEvaluators>();

function evaluatorsOf(session: Session, plan: Plan): Evaluators {
  const known = made.get(session);
  if (known !== undefined) return known.of(plan);
  if (session.workbook === undefined) throw new Error('The formula engine is still loading.');
  const evaluators = new ReplayEvaluators(session.workbook.another());
  made.set(session, evaluators);
  return evaluators.of(plan);
}

/** A study of many points of the open plan; the same key asks the same question, undefined asks nothing. */
export function usePlanStudy<T>(
  key: string | undefined,
  make: (evaluators: Evaluators) => Study<T>,
): StudyState<T> {
  const session = useSession();
  const plan = usePlan();
  return useStudy(
    key === undefined ? undefined : { key, urgent: true, make: () => make(evaluatorsOf(session, plan)) },
  );
}
