import { useEffect, useMemo, useRef, useSyncExternalStore } from 'react';
import type { Plan } from '../../plan/plan.ts';
import { ruledMount } from '../../session/own-boat/with-mount.ts';
import { deskOf } from '../../session/studies/desk.ts';
import { mountAsk } from '../../session/studies/mount-ask.ts';
import type { Report } from '../../session/study-desk.ts';
import type { FirstMount } from '../../studies/first-mount/ask.ts';
import { Action } from '../parts/action.tsx';
import { useReady, useSession } from '../use-session.ts';

/** The mount that a plan is opened with. */
export interface Made {
  readonly values: readonly number[];
  /** How it stands to the limits; unknown where the search was stopped before anything was judged, or could not run. */
  readonly found?: FirstMount;
  /** Why the search could not run. */
  readonly why?: string;
}

const WAITING: Report<never> = { state: 'waiting' };
const listenToNothing = () => () => {};
const counted = (count: number): string => count.toLocaleString('en-GB');

interface Props {
  readonly plan: Plan;
  readonly onMade: (made: Made) => void;
}

/** A first mount being worked out for a plan that is not open yet: how far it has come, and a way to stop it. */
export function MakingMount({ plan, onMade }: Props) {
  const session = useSession();
  const ready = useReady();
  const asked = useMemo(
    () =>
      ready
        ? deskOf(session).ask(plan, { study: 'mount', ask: mountAsk(plan, plan.active), urgent: true })
        : undefined,
    [ready, session, plan],
  );
  const report = useSyncExternalStore(
    asked?.subscribe ?? listenToNothing,
    (): Report<FirstMount> => asked?.report() ?? WAITING,
  );
  const made = useRef(onMade);
  made.current = onMade;
  useEffect(() => {
    if (report.state === 'answered') made.current({ values: report.value.mount.values, found: report.value });
    if (report.state === 'failed') made.current({ values: ruledMount(plan), why: report.why });
  }, [report, plan]);

  const progress = report.state === 'working' ? report.progress : undefined;
  const stop = (): void => {
    const found = progress?.soFar as FirstMount | undefined;
    onMade(found === undefined ? { values: ruledMount(plan) } : { values: found.mount.values, found });
  };
  return (
    <>
      <p>
        Shims, brackets, shaft and struts are placed by what you read, then moved about until the tightest
        limits have the most room.
      </p>
      <div className="own-boat-doors">
        <p className="own-boat-told type-small" role="status">
          {progress === undefined
            ? 'Being worked out.'
            : `${progress.stage ?? 'Being worked out'}: ${counted(progress.done)} of ${counted(progress.of)}.`}
        </p>
        <Action onPress={stop}>Stop, and take the best so far</Action>
      </div>
    </>
  );
}
