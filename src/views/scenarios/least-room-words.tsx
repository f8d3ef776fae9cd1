import type { ScenarioAnswer } from '../../session/scenario-answers.ts';
import { limitTitle, roomWords } from '../../workbook/limit-words.ts';
import { StateWord } from '../parts/state-word.tsx';
import { useUnits } from '../parts/use-units.ts';

const TOLD = ['outside', 'no answer', 'near'] as const;

/** The limit with the least room of a scenario, and how many others are outside, near or without an answer. */
export function LeastRoomWords({ answer }: { readonly answer: ScenarioAnswer | undefined }) {
  const units = useUnits();
  if (answer === undefined) return <span className="base-soft">being worked out</span>;
  const limit = answer.leastRoom === undefined ? undefined : answer.limits.get(answer.leastRoom.name);
  const others = TOLD.map((state) => {
    const all = [...answer.limits.values()].filter((it) => it.verdict.state === state).length;
    return [state, all - (limit?.verdict.state === state ? 1 : 0)] as const;
  }).filter(([, n]) => n > 0);
  return (
    <span className="scenarios-least">
      {limit === undefined ? (
        <span>No limit has an answer</span>
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
