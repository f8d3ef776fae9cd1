import type { Units } from '../../plan/plan.ts';
import type { Session } from '../../session/session.ts';
import { useLook } from '../use-session.ts';

const unitsOf = (session: Session): Units => session.plan.units;

/** The units shown; unlike the whole plan, the same through most edits. */
export const useUnits = (): Units => useLook(unitsOf);
