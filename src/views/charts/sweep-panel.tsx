import { useCallback, useId, useMemo, useState } from 'react';
import { inputNamed, inputs, results } from '../../plan/book.ts';
import { standingOf, worstFirst } from '../../session/standing.ts';
import { whatHolds } from '../../session/sweep-words.ts';
import type { Evaluator } from '../../studies/evaluator.ts';
import { sweep } from '../../studies/sweep.ts';
import { labelOf, shown, unitOf } from '../parts/show.ts';
import { useStudy } from '../parts/use-study.ts';
import { useJudgement, usePlan, useSession } from '../use-session.ts';
import { SweepChart } from './sweep-chart.tsx';
import { SweepTable } from './sweep-table.tsx';
import './sweep-panel.css';

/** Values looked at along an input that is not a whole number. */
const POINTS = 41;

const swept = inputs.filter(
  (cell) => (cell.type === 'number' || cell.type === 'whole') && cell.usual !== undefined,
);
const judged = results.filter((cell) => cell.flag !== true);

interface Props {
  /** Height of the whole panel's plot, px. */
  readonly height: number;
}

/** One input varied, one result drawn, with the limits that judge it and where they turn. */
export function SweepPanel({ height }: Props) {
  const session = useSession();
  const plan = usePlan();
  const judgement = useJudgement();
  const [input, setInput] = useState('shim_count');
  const [asked, setAsked] = useState<string>();
  const id = useId();
  const worst = worstFirst(standingOf(judgement.limits)).find((it) => it.graded)?.result;
  const [held, setHeld] = useState<string>();
  // The result that is drawn at first is the worst one; once drawn it stays, so that an edit can be followed.
  if (held === undefined && worst !== undefined) setHeld(worst);
  const result = asked ?? held ?? 'rudder_gap';
  const cell = inputNamed(input);

  const make = useCallback(
    (evaluator: Evaluator) => {
      const present = session.value(input);
      const [low, high] = inputNamed(input)?.usual ?? [0, 1];
      return sweep(evaluator, {
        input,
        results: [result],
        low,
        high,
        present: typeof present === 'number' ? present : null,
        whole: inputNamed(input)?.type === 'whole',
        only: inputNamed(input)?.only,
        points: POINTS,
      });
    },
    [session, input, result],
  );
  const { value, stale, why, progress } = useStudy(make);
  const fits = value !== undefined && value.ask.input === input && value.ask.results[0] === result;
  const limits = useMemo(
    () => judgement.limits.filter((it) => it.result === result),
    [judgement.limits, result],
  );

  return (
    <section className="sweep" data-view="sweep" aria-label="Sweep" aria-busy={stale}>
      <div className="sweep-ask">
        <label className="sweep-pick type-small" htmlFor={`${id}r`}>
          <span className="base-spoken">Result drawn</span>
          <select id={`${id}r`} value={result} onChange={(event) => setAsked(event.target.value)}>
            {[...judged, ...plan.ownCells].map((it) => (
              <option key={it.name} value={it.name}>
                {it.label}
              </option>
            ))}
          </select>
        </label>
        <label className="sweep-pick type-small" htmlFor={`${id}i`}>
          against
          <select id={`${id}i`} value={input} onChange={(event) => setInput(event.target.value)}>
            {swept.map((it) => (
              <option key={it.name} value={it.name}>
                {it.label}
              </option>
            ))}
          </select>
        </label>
      </div>
      {why !== undefined ? (
        <p className="sweep-failed type-small">The sweep could not be made: {why}</p>
      ) : fits && cell !== undefined ? (
        <SweepChart swept={value} cell={cell} limits={limits} stale={stale} height={height - 92} />
      ) : (
        <p className="sweep-failed type-small base-soft">
          {progress === undefined ? 'Working it out.' : `${progress.done} of ${progress.of}.`}
        </p>
      )}
      {fits && (
        <>
          <p className="sweep-read type-small">
            {stale ? 'For the plan before the last edit. ' : ''}
            {whatHolds(value, plan.units)}
          </p>
          <SweepTable
            swept={value}
            inputLabel={labelOf(input, plan)}
            resultLabel={labelOf(result, plan)}
            show={(at, name) => (at === null ? 'no answer' : shown(at, unitOf(name, plan), plan.units))}
          />
        </>
      )}
    </section>
  );
}
