import type { Limit } from '../../drawings/limits.ts';
import type { Values } from '../../drawings/values.ts';
import type { Session } from '../../session/session.ts';

/** The session's answers as a drawing reads them. */
export const sessionValues = (session: Session): Values => ({
  number(name) {
    const value = session.value(name);
    return typeof value === 'number' ? value : null;
  },
  flag(name) {
    const value = session.value(name);
    return typeof value === 'boolean' ? value : null;
  },
});

/** The session's limits as a drawing needs them. */
export const sessionLimits = (session: Session): Limit[] =>
  session.judgement.limits.map((it) => ({
    name: it.name,
    state: it.verdict.state,
    value: it.value ?? null,
    low: it.low ?? null,
    high: it.high ?? null,
  }));
