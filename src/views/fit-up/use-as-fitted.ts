import { useEffect, useState } from 'react';
import { type AsFitted, asFitted } from '../../session/fit-up/as-fitted.ts';
import { usePlan, useReady, useSession } from '../use-session.ts';

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

/** What the plan comes to as fitted, from a workbook of its own that lives as long as the view that asks is shown. */
export function useAsFitted(): AsFitted | undefined {
  const session = useSession();
  const plan = usePlan();
  const ready = useReady();
  const [bench, setBench] = useState<Bench>();
  const [found, setFound] = useState<AsFitted>();
  useEffect(() => {
    if (!ready) return;
    const made = unlessItFails(() => session.workbook?.another());
    setBench(made);
    return () => made?.destroy();
  }, [ready, session]);
  useEffect(() => {
    if (bench === undefined) return;
    const timer = setTimeout(() => setFound(unlessItFails(() => asFitted(bench, plan))), PATIENCE);
    return () => clearTimeout(timer);
  }, [bench, plan]);
  return found;
}
