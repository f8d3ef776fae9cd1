import { useEffect, useState } from 'react';
import type { Plan } from '../../plan/plan.ts';
import { type AsFitted, asFitted, limitsAsFitted } from '../../session/fit-up/as-fitted.ts';
import type { LimitAnswer } from '../../workbook/judged.ts';
import { useJudgement, usePlan, useReady, useSession } from '../use-session.ts';

type Bench = Parameters<typeof asFitted>[0] & { destroy(): void };

/** How long a newer edit is waited for, ms. */
const PATIENCE = 40;

/** Nothing, rather than what stood there before, where the engine fails. */
function unlessItFails<T>(work: () => T): T | undefined {
  try {
    return work();
  } catch {
    return undefined;
  }
}

interface Found<T> {
  readonly of: Plan;
  readonly is: T;
}

/** The last answer as fitted and the plan it is of, from a workbook that lives as long as the view that asks is shown. */
function useFound<T>(work: (bench: Bench, plan: Plan) => T, asked: boolean): Found<T> | undefined {
  const session = useSession();
  const plan = usePlan();
  const isWanted = useReady() && asked;
  const [bench, setBench] = useState<Bench>();
  const [found, setFound] = useState<Found<T>>();
  useEffect(() => {
    if (!isWanted) return;
    const made = unlessItFails(() => session.workbook?.another());
    setBench(made);
    return () => {
      made?.destroy();
      setBench(undefined);
    };
  }, [isWanted, session]);
  useEffect(() => {
    if (bench === undefined) return;
    const timer = setTimeout(() => {
      const is = unlessItFails(() => work(bench, plan));
      setFound(is === undefined ? undefined : { of: plan, is });
    }, PATIENCE);
    return () => clearTimeout(timer);
  }, [bench, plan, work]);
  return isWanted ? found : undefined;
}

/** What the plan comes to as fitted; undefined until it is first worked out. */
export const useAsFitted = (): AsFitted | undefined => useFound(asFitted, true)?.is;

/** Whether two plans have the same limits: edits share what they leave alone. */
const sameLimits = (a: Plan, b: Plan): boolean =>
  a.fit.fitted === b.fit.fitted &&
  (['inputs', 'scenarios', 'active', 'tables', 'ownCells', 'limits'] as const).every(
    (key) => a[key] === b[key],
  );

/** Every limit with what was fitted in place of what was planned; undefined while that is worked out. */
export function useFittedLimits(): readonly LimitAnswer[] | undefined {
  const plan = usePlan();
  const planned = useJudgement().limits;
  const ready = useReady();
  const isFitted = plan.fit.fitted.size > 0;
  const found = useFound(limitsAsFitted, isFitted);
  if (!ready) return undefined;
  if (!isFitted) return planned;
  return found !== undefined && sameLimits(found.of, plan) ? found.is : undefined;
}
