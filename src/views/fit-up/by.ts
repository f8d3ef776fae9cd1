import type { ReadBy } from '../../session/fit-up/enter-fitted.ts';
import type { Session } from '../../session/session.ts';

const two = (value: number): string => String(value).padStart(2, '0');

/** The day and minute as they are kept with a reading. */
export const nowWords = (now = new Date()): string =>
  `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())} ${two(now.getHours())}:${two(now.getMinutes())}`;

/** Who is at work, as the handover record says it, and when it is. */
export const by = (session: Session): ReadBy => ({
  who: session.plan.fit.handover.get('fitted_by') ?? '',
  when: nowWords(),
});
