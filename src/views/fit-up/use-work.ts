import { useMemo } from 'react';
import { orderOfWork } from '../../fitting/order-of-work.ts';
import type { WorkGiven, WorkStep } from '../../fitting/step.ts';
import { useJudgement, usePlan, useSession } from '../use-session.ts';

/** What the day's texts are made from; made anew when an answer changes. */
export function useWorkGiven(): WorkGiven {
  const session = useSession();
  const plan = usePlan();
  const judgement = useJudgement();
  return useMemo(
    () => ({ ask: (name) => session.value(name), units: plan.units }),
    [session, plan, judgement],
  );
}

export function useWork(): readonly WorkStep[] {
  const given = useWorkGiven();
  return useMemo(() => orderOfWork(given), [given]);
}
