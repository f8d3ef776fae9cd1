import type { Plan } from '../../plan/plan.ts';
import type { Session } from '../session.ts';

/** All of a plan that its studies look at; their own settings, notes and the like are not. */
const LOOKED_AT = [
  'inputs',
  'limits',
  'tables',
  'ownCells',
  'scenarios',
  'active',
] as const satisfies readonly (keyof Plan)[];

const last = new WeakMap<Session, Plan>();

/** The session's plan as studies see it: the same object until something changes that they look at. */
export function studiedPlan(session: Session): Plan {
  const { plan } = session;
  const known = last.get(session);
  if (known !== undefined && LOOKED_AT.every((it) => known[it] === plan[it])) return known;
  last.set(session, plan);
  return plan;
}
