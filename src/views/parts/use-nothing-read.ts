import { nothingRead } from '../../session/nothing-read.ts';
import type { Session } from '../../session/session.ts';
import { useLook } from '../use-session.ts';

const isNew = (session: Session): boolean => nothingRead(session.plan);

/** Whether the open plan is still the template's own stand-ins throughout. */
export const useNothingRead = (): boolean => useLook(isNew);
