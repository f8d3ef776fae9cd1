import type { SceneOptions } from '../../drawings/options.ts';
import type { Scene } from '../../drawings/scene.ts';
import type { Values } from '../../drawings/values.ts';
import type { Units } from '../../plan/plan.ts';
import type { LastGood } from '../../session/last-good.ts';
import type { Session } from '../../session/session.ts';
import { sessionLimits, sessionReasons, sessionValues, valuesOf } from './session-values.ts';
import { surveyOptions } from './survey-options.ts';

export type View = (values: Values, options: SceneOptions) => Scene;

interface Asked {
  readonly view: View;
  readonly units: Units;
  readonly lit: string | undefined;
  readonly ghost: Values | undefined;
  readonly lastGood: LastGood;
}

/** The open plan as one view shows it, with what is behind it and what cannot be computed where it last stood. */
export function drawn(session: Session, { view, units, lit, ghost, lastGood }: Asked): Scene {
  lastGood.remember(session);
  return view(sessionValues(session), {
    unit: units,
    limits: sessionLimits(session),
    lastGood: valuesOf(lastGood.value),
    reasons: sessionReasons(session),
    ...surveyOptions(session),
    ...(lit === undefined ? {} : { lit }),
    ...(ghost === undefined ? {} : { ghost }),
  });
}
