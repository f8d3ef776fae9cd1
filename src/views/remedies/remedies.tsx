import { useCallback, useMemo } from 'react';
import { inputNamed } from '../../plan/book.ts';
import { harmSentences, movablesFor, remedySentence } from '../../session/remedy-words.ts';
import type { Evaluator } from '../../studies/evaluator.ts';
import { type Remedy, remedies } from '../../studies/remedies.ts';
import { Action } from '../parts/action.tsx';
import { type StudyState, useStudy } from '../parts/use-study.ts';
import { useLimit, usePlan, useSession } from '../use-session.ts';
import './remedies.css';

/** What would mend a limit, worked out again whenever the plan changes. */
export function useRemedies(limit: string | undefined): StudyState<readonly Remedy[]> {
  const session = useSession();
  const make = useCallback(
    (evaluator: Evaluator) =>
      remedies(evaluator, {
        limit: limit ?? '',
        choices: movablesFor(limit ?? '', session.plan, session.workbook?.uses() ?? new Map(), (name) =>
          session.value(name),
        ),
      }),
    [limit, session],
  );
  return useStudy(limit === undefined ? undefined : make);
}

/** The first remedy as a sentence for the lead; empty while it is being worked out. */
export function RemedySentence({ limit }: { readonly limit: string }) {
  const { units } = usePlan();
  const { value, stale } = useRemedies(limit);
  const best = stale ? undefined : value?.[0];
  return best === undefined || best.mended.after.name !== limit ? null : remedySentence(best, units);
}

/** The choices that reach a limit which is past or near: the value that mends it, what that makes worse, and a try. */
export function Remedies({ limit }: { readonly limit: string }) {
  const session = useSession();
  const { units } = usePlan();
  const state = useLimit(limit)?.verdict.state;
  const asks = state === 'past' || state === 'near';
  const { value, stale, why } = useRemedies(asks ? limit : undefined);
  const found = useMemo(() => (value ?? []).filter((it) => it.mended.after.name === limit), [value, limit]);
  if (!asks) return null;
  if (why !== undefined) return <p>What would mend it could not be worked out: {why}</p>;
  if (stale && found.length === 0) return <p className="base-soft">Working out what would mend it.</p>;
  if (found.length === 0) {
    return (
      <p>No single choice mends it inside its usual range. Look at the readings and bounds it rests on.</p>
    );
  }
  return (
    <ul className="remedies" aria-busy={stale}>
      {found.map((remedy) => (
        <li key={remedy.choice} className="remedy">
          <p>
            <b>{remedySentence(remedy, units)}</b> {harmSentences(remedy, units).join(' ')}
          </p>
          <Action
            disabled={stale}
            says={`Try it: ${inputNamed(remedy.choice)?.label ?? remedy.choice}`}
            onPress={() => session.choose(remedy.choice, remedy.value)}
          >
            Try it
          </Action>
        </li>
      ))}
    </ul>
  );
}
