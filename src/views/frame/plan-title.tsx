import type { Session } from '../../session/session.ts';
import { useLook } from '../use-session.ts';

const titleOf = (session: Session): string => session.plan.title;

/** The open plan's title, which heads the page. */
export const PlanTitle = () => <h1 className="plan-title type-plan">{useLook(titleOf)}</h1>;
