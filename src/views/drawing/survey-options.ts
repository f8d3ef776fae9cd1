import type { SceneOptions } from '../../drawings/options.ts';
import { keepOutsOf } from '../../order/keep-outs-of.ts';
import { profileOf } from '../../order/profile-of.ts';
import type { Session } from '../../session/session.ts';

/** What the survey adds to a drawing: the face as measured, where the plan follows it, and what is in the way. */
export function surveyOptions(session: Session): Pick<SceneOptions, 'profile' | 'keepOuts'> {
  const profile = profileOf((name) => session.value(name), session.plan);
  return {
    ...(profile.length === 0 ? {} : { profile: profile.map(([z = 0, x = 0]) => [z, x] as const) }),
    keepOuts: keepOutsOf(session.plan),
  };
}
