import { useMemo } from 'react';
import { worstFirst } from '../../calc/limits/worst-first.ts';
import { limitTitle, roomWords } from '../../workbook/limit-words.ts';
import { Mark, markedOf } from '../parts/mark.tsx';
import { StateWord } from '../parts/state-word.tsx';
import { useNothingRead } from '../parts/use-nothing-read.ts';
import { useUnits } from '../parts/use-units.ts';
import { useJudgement } from '../use-session.ts';

interface Props {
  readonly rows: number;
  /** Address of the board; none where the board stands on the same page. */
  readonly href: string;
}

/** The worst limits, always in sight: mark, name, state, distance, and how many others are outside. */
export function WorstStrip({ rows, href }: Props) {
  const { limits } = useJudgement();
  const units = useUnits();
  const isNew = useNothingRead();
  const ranked = useMemo(() => worstFirst(limits), [limits]);
  const worst = ranked.slice(0, rows);
  const others = ranked.slice(rows).filter((it) => it.verdict.state === 'outside').length;
  return (
    <a className="strip" href={href} data-view="strip" data-new={isNew ? '' : undefined}>
      {worst.length === 0 && <span className="type-small">The limits are being worked out.</span>}
      {worst.map((limit, at) => (
        <span key={limit.name} className="strip-row" data-limit={limit.name} data-state={limit.verdict.state}>
          <Mark limit={markedOf(limit)} />
          <span className="strip-name type-label">{limitTitle(limit)}</span>
          <StateWord state={limit.verdict.state} />
          <span className="strip-room type-small">
            {roomWords(limit, units)}
            {at === rows - 1 && others > 0 && <span className="strip-others">+ {others} outside</span>}
          </span>
        </span>
      ))}
      <span className="base-spoken">Open the limit board</span>
    </a>
  );
}
