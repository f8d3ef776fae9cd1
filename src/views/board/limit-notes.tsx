import type { ReactNode } from 'react';
import { limitNamed, resultNamed } from '../../plan/book.ts';
import { boundWords, limitSentence } from '../../session/limit-words.ts';
import { choicesAmong, limitRestsOn, standInsAmong } from '../../session/standing.ts';
import type { LimitAnswer } from '../../workbook/judged.ts';
import { BackingText } from '../parts/backing-text.tsx';
import { labelOf, shortOf, unitOf } from '../parts/show.ts';
import { usePlan, useSession } from '../use-session.ts';

const SOURCE: Readonly<Record<string, string>> = {
  "gear's manual": 'the gear’s manual',
  'published source': 'the part’s own strength, by the published sources named below',
  "owner's choice": 'your choice',
  'common practice, no source': 'common practice, no source',
  assumed: 'assumed',
  geometry: 'what fits on the transom',
};

interface Props {
  readonly limit: LimitAnswer;
  readonly onChoice?: (name: string) => void;
  readonly children: ReactNode;
}

/** What a limit judges, where its bound comes from, what it rests on, and which choices move it. */
export function LimitNotes({ limit, onChoice, children }: Props) {
  const session = useSession();
  const plan = usePlan();
  const unit = unitOf(limit.result, plan);
  const source = limitNamed(limit.name)?.source;
  const names = limitRestsOn(limit, session.workbook?.uses() ?? new Map());
  const choices = choicesAmong(names);
  const missing = standInsAmong(plan, names);
  const formula = resultNamed(limit.result)?.formula;
  const bound = limit.graded ? boundWords(limit, unit, plan.units) : '';
  return (
    <div className="board-notes type-small">
      <p>{limitSentence(limit, unit, plan.units) || limit.why}</p>
      {children}
      {bound !== '' && (
        <p>
          Bound: {bound}
          {source === undefined ? '' : ` (${SOURCE[source] ?? source})`}. Near within{' '}
          {labelledNear(limit.near, unit)}.
        </p>
      )}
      {choices.length > 0 && (
        <p>
          Moved by:{' '}
          {choices.map((name, at) => (
            <span key={name}>
              {at === 0 ? '' : ', '}
              <button type="button" className="base-plain-button" onClick={() => onChoice?.(name)}>
                {shortOf(name, plan)}
              </button>
            </span>
          ))}
          .
        </p>
      )}
      <p>
        {missing.length === 0
          ? 'Rests on no stand-in.'
          : `Rests on ${missing.length} ${missing.length === 1 ? 'stand-in' : 'stand-ins'}: ${missing.map((name) => labelOf(name, plan)).join('; ')}.`}
      </p>
      {formula !== undefined && <BackingText formula={formula} />}
    </div>
  );
}

const labelledNear = (near: number, unit: string): string =>
  unit === '–' ? String(near) : unit === 'deg' ? `${near}°` : `${near} ${unit}`;
