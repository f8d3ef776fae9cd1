import { useMemo } from 'react';
import type { Plan } from '../../plan/plan.ts';
import { stepOf } from '../../plan/step-of.ts';
import { mendingRanges, remedyAsk } from '../../session/remedy-ask.ts';
import type { Session } from '../../session/session.ts';
import type { RemediesCall } from '../../session/studies/mending.ts';
import { studyWords } from '../../session/study-words.ts';
import type { Remedies } from '../../studies/remedies.ts';
import { leadSentence } from '../../studies/remedy-words.ts';
import { type StudyState, useStudy } from '../parts/use-study.ts';
import { useLimit, usePlan, useSession } from '../use-session.ts';

const askFor = (limit: string, plan: Plan, session: Session): RemediesCall => ({
  scenario: plan.active,
  over: mendingRanges(plan, (name) => session.value(name)),
  ...remedyAsk({
    limit,
    plan,
    uses: session.workbook?.uses() ?? new Map(),
    value: (name) => session.value(name),
    stepOf: (cell) => stepOf(cell, plan.units),
  }),
});

/**
 * What would mend a limit that is outside or near. It is worked out once for a plan, whoever asks, and again when the
 * plan changes; a limit that needs no mending asks nothing.
 */
export function useRemedies(limit: string): StudyState<Remedies> {
  const session = useSession();
  const plan = usePlan();
  const state = useLimit(limit)?.verdict.state;
  const needs = state === 'outside' || state === 'near';
  const ask = useMemo(
    () => (needs ? askFor(limit, plan, session) : undefined),
    [needs, limit, plan, session],
  );
  const found = useStudy(ask && { study: 'remedies', ask, key: limit });
  const early = found.progress?.soFar as Remedies | undefined;
  return early === undefined ? found : { ...found, value: early, stale: false };
}

/** The lead's sentence about what would mend a limit; undefined while it is worked out, or when nothing need be. */
export function useRemedySentence(limit: string): string | undefined {
  const plan = usePlan();
  const { value, stale } = useRemedies(limit);
  return value === undefined || stale ? undefined : leadSentence(value, studyWords(plan));
}
