import type { Plan, StudySettings } from '../plan.ts';
import { type Edited, edited } from './edited.ts';

type Settings = StudySettings['settings'];

const same = (a: Settings, b: Settings): boolean =>
  JSON.stringify(Object.entries(a).sort()) === JSON.stringify(Object.entries(b).sort());

/** Puts a study's settings in place of those it had; with none, the study's row goes. */
export function setStudy(plan: Plan, study: string, settings: Settings): Edited {
  const known = plan.studies.find((it) => it.study === study);
  if (same(known?.settings ?? {}, settings)) return edited(plan);
  const row: StudySettings = { study, settings };
  const isEmpty = Object.keys(settings).length === 0;
  const studies = isEmpty
    ? plan.studies.filter((it) => it !== known)
    : known === undefined
      ? [...plan.studies, row]
      : plan.studies.map((it) => (it === known ? row : it));
  return edited({ ...plan, studies });
}
