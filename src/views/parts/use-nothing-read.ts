import { nothingRead } from '../../session/nothing-read.ts';
import type { Session } from '../../session/session.ts';
import { useLook } from '../use-session.ts';

// Until the engine answers, the kept plan may still be on its way.
const isNew = (session: Session): boolean => session.ready && nothingRead(session.plan);

/** Whether the open plan is still the template's own stand-ins throughout. */
export const useNothingRead = (): boolean => useLook(isNew);
