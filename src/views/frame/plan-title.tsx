import type { Session } from '../../session/session.ts';
import { useLook } from '../use-session.ts';

const titleOf = (session: Session): string => session.plan.title;

/** The open plan's title, which heads the page and names its window. */
export function PlanTitle() {
  const title = useLook(titleOf);
  return (
    <>
      <title>{`${title}, Sternmount`}</title>
      <h1 className="plan-title type-plan">{title}</h1>
    </>
  );
}
