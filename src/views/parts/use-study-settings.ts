import { useCallback } from 'react';
import { setStudy } from '../../plan/edit.ts';
import type { StudySettings } from '../../plan/plan.ts';
import type { Session } from '../../session/session.ts';
import { useLook, useSession } from '../use-session.ts';

type Settings = StudySettings['settings'];

const NONE: Settings = {};

/**
 * What a study was asked, as the plan keeps it, and a way to ask otherwise: an edit that can be undone and is saved.
 * `label` says what the edit changed.
 */
export function useStudySettings(
  study: string,
  label: string,
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
      session.edit(label, (plan) => {
        const now = plan.studies.find((row) => row.study === study)?.settings ?? NONE;
        return setStudy(plan, study, { ...now, ...change });
      });
    },
    [session, study, label],
  );
  return [settings, set];
}
