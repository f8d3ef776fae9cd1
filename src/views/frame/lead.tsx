import type { ReactNode } from 'react';
import { limitSentence } from '../../session/limit-words.ts';
import { standingOf, worstFirst } from '../../session/standing.ts';
import { labelOf, unitOf } from '../parts/show.ts';
import { useJudgement, usePlan, useReady } from '../use-session.ts';

interface Props {
  /** What would mend the limit, as a sentence. */
  readonly mend?: (limit: string) => ReactNode;
}

/** What is past, why, and what would mend it: one sentence of each, about the worst limit. */
export function Lead({ mend }: Props) {
  const judgement = useJudgement();
  const plan = usePlan();
  const ready = useReady();
  const standing = standingOf(judgement.limits);
  const worst = worstFirst(standing)[0];
  if (!ready || worst === undefined) {
    return <p className="frame-lead type-lead">Working out where this mount stands.</p>;
  }
  const unit = unitOf(worst.result, plan);
  const { state } = worst.verdict;
  const others = standing.past.length - (state === 'past' ? 1 : 0);
  return (
    <div className="frame-lead type-lead" aria-live="polite">
      <p>
        {state === 'no answer' && `No answer for: ${labelOf(worst.result, plan)}. ${worst.why ?? ''}`}
        {state === 'inside' && 'Every limit that applies is inside. The least room: '}
        {state !== 'no answer' && limitSentence(worst, unit, plan.units)}{' '}
        {(state === 'past' || state === 'near') && mend?.(worst.name)}
        {others > 0 && ` ${others === 1 ? 'One more is' : `${others} more are`} past.`}
      </p>
      <p className="type-small base-soft">
        Estimates. The gear maker’s manual comes first; let a rigger, yard or surveyor look before you drill.
      </p>
    </div>
  );
}
