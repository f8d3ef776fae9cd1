import { useCallback } from 'react';
import type { StudySettings } from '../../plan/plan.ts';
import type { Session } from '../../session/session.ts';
import { useLook, useSession } from '../use-session.ts';

type Settings = StudySettings['settings'];

const NONE: Settings = {};

/** What a study was asked, as the plan keeps it, and a way to ask otherwise, which is no step of undo. */
export function useStudySettings(
  study: string,
): readonly [settings: Settings, set: (change: Settings) => void] {
  const session = useSession();
  const settings = useLook(
    useCallback(
      (it: Session) => it.plan.studies.find((row) => row.study === study)?.settings ?? NONE,
      [study],
    ),
  );
  const set = useCallback(
    (change: Settings): void => {
      const now = session.plan.studies.find((row) => row.study === study)?.settings ?? NONE;
      session.arrange(study, { ...now, ...change });
    },
    [session, study],
  );
  return [settings, set];
}
