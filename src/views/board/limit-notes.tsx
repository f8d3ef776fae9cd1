import type { ReactNode } from 'react';
import { limitNamed, resultNamed } from '../../plan/book.ts';
import type { Bound } from '../../plan/template.ts';
import { choicesAmong, limitRestsOn, standInsAmong } from '../../session/standing.ts';
import { formatValue } from '../../units/format-value.ts';
import type { LimitAnswer } from '../../workbook/judged.ts';
import { boundWords, judgedUnit, limitSentence, valueWords } from '../../workbook/limit-words.ts';
import { cellHref } from '../parts/cell-href.ts';
import { bareUnit } from '../parts/length-style.ts';
import { labelOf, shortOf } from '../parts/show.ts';
import { usePlan, useSession } from '../use-session.ts';

const SOURCE: Readonly<Record<string, string>> = {
  "gear's manual": 'the gear’s manual',
  'published source': 'the part’s own strength, by the sources in its backing',
  "owner's choice": 'your choice',
  'common practice, no source': 'common practice, no source',
  assumed: 'assumed',
  geometry: 'what fits on the transom',
};

const nameIn = (bound: Bound | undefined): string | undefined => {
  if (typeof bound === 'string') return bound;
  return typeof bound === 'object' ? bound.minus : undefined;
};

const Links = ({ names, of }: { readonly names: readonly string[]; readonly of: (name: string) => string }) =>
  names.map((name, at) => (
    <span key={name}>
      {at === 0 ? '' : ', '}
      <a href={cellHref(name)}>{of(name)}</a>
    </span>
  ));

interface Props {
  readonly limit: LimitAnswer;
  /** What mends it. */
  readonly children: ReactNode;
}

/** What a limit judges, where its bound comes from, what it rests on, and which choices move it. */
export function LimitNotes({ limit, children }: Props) {
  const session = useSession();
  const plan = usePlan();
  const { units } = plan;
  const unit = judgedUnit(limit);
  const cell = limitNamed(limit.name);
  const names = limitRestsOn(limit, session.workbook?.uses() ?? new Map());
  const choices = choicesAmong(names);
  const missing = standInsAmong(plan, names);
  const boundNames = [nameIn(cell?.low), nameIn(cell?.high)].filter((it) => it !== undefined);
  const short = (name: string): string => shortOf(name, plan);
  return (
    <div className="board-notes type-small">
      <p className="type-label">{limitSentence(limit, units)}</p>
      {children}
      <dl className="board-facts">
        <dt>Judges</dt>
        <dd>
          <a href={cellHref(limit.result)}>
            {resultNamed(limit.result)?.label ?? labelOf(limit.result, plan)}
          </a>
          {', '}
          <b>{valueWords(limit, units)}</b>
        </dd>
        {boundWords(limit, units) !== '' && (
          <>
            <dt>Bound</dt>
            <dd>
              {boundWords(limit, units)}:{' '}
              {cell === undefined ? 'your own limit' : (SOURCE[cell.source] ?? cell.source)}
              {boundNames.length > 0 && ', '}
              <Links names={[...new Set(boundNames)]} of={short} />
              {limit.near > 0 && `. Near within ${formatValue(limit.near, unit, { unit: bareUnit(units) })}`}
            </dd>
          </>
        )}
        {choices.length > 0 && (
          <>
            <dt>Moved by</dt>
            <dd>
              <Links names={choices} of={short} />
            </dd>
          </>
        )}
        <dt>Rests on</dt>
        <dd>
          {missing.length === 0 ? (
            'no stand-in'
          ) : (
            <details>
              <summary>
                {missing.length} {missing.length === 1 ? 'stand-in' : 'stand-ins'}
              </summary>
              <Links names={missing} of={short} />
            </details>
          )}
        </dd>
      </dl>
    </div>
  );
}
