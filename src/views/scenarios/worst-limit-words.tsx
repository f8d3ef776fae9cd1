import { worstFirst } from '../../calc/limits/worst-first.ts';
import type { ScenarioAnswer } from '../../session/scenario-answers.ts';
import { limitTitle, roomWords } from '../../workbook/limit-words.ts';
import { StateWord } from '../parts/state-word.tsx';
import { useUnits } from '../parts/use-units.ts';

const TOLD = ['outside', 'no answer', 'near'] as const;

/** The worst limit of a scenario, and how many others are outside, near or without an answer. */
export function WorstLimitWords({ answer }: { readonly answer: ScenarioAnswer | undefined }) {
  const units = useUnits();
  if (answer === undefined) return <span className="base-soft">being worked out</span>;
  const limit = worstFirst([...answer.limits.values()])[0];
  const others = TOLD.map((state) => {
    const all = [...answer.limits.values()].filter((it) => it.verdict.state === state).length;
    return [state, all - (limit?.verdict.state === state ? 1 : 0)] as const;
  }).filter(([, n]) => n > 0);
  return (
    <span className="scenarios-worst">
      {limit === undefined ? (
        <span>No limit applies</span>
      ) : (
        <>
          <StateWord state={limit.verdict.state} />
          <span>
            {limitTitle(limit)}, {roomWords(limit, units)}
          </span>
        </>
      )}
      {others.map(([state, n]) => (
        <span key={state} className="base-soft">
          {n} {limit?.verdict.state === state ? 'more ' : ''}
          {state}
        </span>
      ))}
    </span>
  );
}
