import { roomWords } from '../../session/limit-words.ts';
import { standingOf, worstFirst } from '../../session/standing.ts';
import { Mark, markedOf } from '../parts/mark.tsx';
import { shortOf, unitOf } from '../parts/show.ts';
import { StateWord } from '../parts/state-word.tsx';
import { useJudgement, usePlan } from '../use-session.ts';

interface Props {
  readonly rows: number;
  readonly onOpen?: () => void;
}

/** The worst limits, always in sight: mark, name, state, distance, and how many others are past. */
export function WorstStrip({ rows, onOpen }: Props) {
  const judgement = useJudgement();
  const plan = usePlan();
  const standing = standingOf(judgement.limits);
  const worst = worstFirst(standing).slice(0, rows);
  const shownPast = worst.filter((it) => it.verdict.state === 'past').length;
  const others = standing.past.length - shownPast;
  return (
    <button className="frame-strip" type="button" onClick={onOpen} aria-label="Open the limits" data-view="strip">
      {worst.map((limit) => (
        <span key={limit.name} className="frame-strip-row">
          <Mark limit={markedOf(limit)} />
          <span className="frame-strip-name type-label">{shortOf(limit.result, plan)}</span>
          <StateWord state={limit.verdict.state} />
          <span className="frame-strip-room type-small">{roomWords(limit, unitOf(limit.result, plan), plan.units)}</span>
        </span>
      ))}
      {others > 0 && <span className="frame-strip-more type-small">{others} more past</span>}
    </button>
  );
}
