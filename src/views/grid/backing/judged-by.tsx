import { limitNamed } from '../../../plan/book.ts';
import type { LimitAnswer } from '../../../workbook/judged.ts';
import { boundWords, limitSentence, roomWords } from '../../../workbook/limit-words.ts';
import { Mark, markedOf } from '../../parts/mark.tsx';
import { StateWord } from '../../parts/state-word.tsx';
import { useUnits } from '../../parts/use-units.ts';
import { useJudgement } from '../../use-session.ts';
import { limitsOn } from '../worst-limit.ts';

/** The limits that judge a result, each with its mark, its bound and who asks for it. */
export function JudgedBy({ result }: { readonly result: string }) {
  const limits = limitsOn(useJudgement(), result);
  return limits.map((limit) => <OneLimit key={limit.name} limit={limit} />);
}

function OneLimit({ limit }: { readonly limit: LimitAnswer }) {
  const units = useUnits();
  const { state } = limit.verdict;
  if (state === 'does not apply') {
    return <p className="type-small base-soft">Its limit does not apply here.</p>;
  }
  const room = roomWords(limit, units);
  const bound = boundWords(limit, units);
  const source = limit.own === true ? 'your own limit' : limitNamed(limit.name)?.source;
  const isPressing = state === 'outside' || state === 'near';
  return (
    <div className="grid-judged">
      <p className="grid-judged-line">
        <Mark limit={markedOf(limit)} />
        <StateWord state={state} />
        {room !== '' && <span className="type-small">{room}</span>}
      </p>
      <p className="type-small">
        {isPressing ? limitSentence(limit, units) : bound === '' ? '' : `Judged by: ${bound}.`}
        {source !== undefined && <span className="base-soft"> Source: {source}.</span>}
      </p>
    </div>
  );
}
