import { nowWords } from '../../fitting/wait.ts';
import type { ReadBy } from '../../session/fit-up/enter-fitted.ts';
import type { Session } from '../../session/session.ts';

/** Who is at work, as the handover record says it, and when it is. */
export const by = (session: Session): ReadBy => ({
  who: session.plan.fit.handover.get('fitted_by') ?? '',
  when: nowWords(),
});
