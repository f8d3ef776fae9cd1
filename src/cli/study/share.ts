import type { StudySettings } from '../../plan/plan.ts';
import type { Given } from './given.ts';

/** The settings that odds and drivers go by: the plan's, with the shared error that the command line asks for. */
export function withShare(given: Given): StudySettings['settings'] {
  const share = given.number('share', 0, 1, false);
  return { ...given.settings('odds'), ...(share === undefined ? {} : { share }) };
}
