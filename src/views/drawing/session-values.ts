import type { Limit } from '../../drawings/limits.ts';
import type { Values } from '../../drawings/values.ts';
import type { Value } from '../../plan/plan.ts';
import type { Session } from '../../session/session.ts';

/** Answers by name as a drawing reads them. */
export const valuesOf = (value: (name: string) => Value): Values => ({
  number(name) {
    const it = value(name);
    return typeof it === 'number' ? it : null;
  },
  flag(name) {
    const it = value(name);
    return typeof it === 'boolean' ? it : null;
  },
});

/** The session's answers as a drawing reads them. */
export const sessionValues = (session: Session): Values => valuesOf((name) => session.value(name));

/** Why cells have no answer, by name. */
export function sessionReasons(session: Session): Record<string, string> {
  const reasons: Record<string, string> = {};
  for (const name of session.names) {
    const why = session.answer(name)?.why;
    if (why !== undefined) reasons[name] = why;
  }
  return reasons;
}

/** The session's limits as a drawing needs them. */
export const sessionLimits = (session: Session): Limit[] =>
  session.judgement.limits.map((it) => ({
    name: it.name,
    state: it.verdict.state,
    value: it.value ?? null,
    low: it.low ?? null,
    high: it.high ?? null,
  }));
