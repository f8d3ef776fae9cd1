import { useMemo, useState } from 'react';
import { worstFirst } from '../../calc/limits/worst-first.ts';
import { limitCells } from '../../plan/book.ts';
import type { OwnLimit } from '../../plan/plan.ts';
import { sweepAsk } from '../../session/studies/sweep-ask.ts';
import { variedCell } from '../../session/studies/varied-cell.ts';
import { studyWords } from '../../session/study-words.ts';
import { whatHolds } from '../../studies/sweep-words.ts';
import { listed } from '../../studies/words.ts';
import { Chooser } from '../parts/chooser.tsx';
import { labelOf, unitOf } from '../parts/show.ts';
import { useStudy } from '../parts/use-study.ts';
import { useStudySettings } from '../parts/use-study-settings.ts';
import { useJudgement, usePlan } from '../use-session.ts';
import type { OtherLine } from './other-lines.ts';
import { ROOM } from './plot-box.ts';
import { SweepChart } from './sweep-chart.tsx';
import { choiceOf, inputOptions, MOST_RESULTS, resultOptions } from './sweep-choice.ts';
import { SweepTable } from './sweep-table.tsx';
import './sweep-panel.css';

/** Scenarios laid over the one looked at: as many as there are kinds of line. */
const MOST_OTHERS = 6;
/** Height of the line of words above a chart and of the one below it, px. */
const WORDS = 52;
const LEAST_HEIGHT = 120;
/** Of a chart's height, what lies above and below the plot, px. */
const AXES = ROOM.top + ROOM.bottom;

const NO_LINES: readonly OtherLine[] = [];
const NO_LIMITS: ReadonlySet<string> = new Set();

/** Which limits judge which result. */
function limitsByResult(own: readonly OwnLimit[]): ReadonlyMap<string, ReadonlySet<string>> {
  const found = new Map<string, Set<string>>();
  for (const { name, result } of [...limitCells, ...own]) {
    found.set(result, (found.get(result) ?? new Set()).add(name));
  }
  return found;
}

const BASE = 'Base';

interface Props {
  /** Height of one chart with the words above and below it, px. */
  readonly height: number;
}

/** One input varied and up to three results drawn, with the limits that judge them and where those turn. */
export function SweepPanel({ height }: Props) {
  const plan = usePlan();
  const judgement = useJudgement();
  const { units, ownCells, limits: ownLimits } = plan;
  const [settings, set] = useStudySettings('sweep');
  const { input, picked, isCompared } = useMemo(() => choiceOf(settings, plan), [settings, plan]);
  const setPicked = (results: readonly string[]): void => set({ results });
  const worst = worstFirst(judgement.limits).find((it) => it.graded)?.result;
  const [first, setFirst] = useState<string>();
  // The result drawn at first is the worst one; once drawn it stays, so that an edit can be followed.
  if (first === undefined && worst !== undefined) setFirst(worst);

  const cell = useMemo(() => variedCell(input, { ownCells }), [input, ownCells]);
  const drawn = picked.length === 0 ? [first ?? 'rudder_gap'] : picked;
  const all = [null, ...plan.scenarios.map((it) => it.name)].filter((it) => it !== plan.active);
  const scenarios = all.slice(0, MOST_OTHERS);
  const left = all.slice(MOST_OTHERS).map((it) => it ?? BASE);
  const canCompare = plan.scenarios.length > 0;
  const compares = canCompare && isCompared;

  const { value, stale, why, progress } = useStudy(
    cell && { study: 'sweep', ask: sweepAsk(cell, drawn, plan.active), urgent: true },
  );
  const lines = useStudy(
    cell && compares
      ? { study: 'lines', ask: { ...sweepAsk(cell, drawn, plan.active), scenarios }, urgent: true }
      : undefined,
  );
  const names = scenarios.map((it) => it ?? BASE).join('\n');
  const others = useMemo(
    () =>
      compares && lines.value !== undefined
        ? lines.value.map((points, i): OtherLine => ({ name: names.split('\n')[i] ?? '', points }))
        : NO_LINES,
    [compares, lines.value, names],
  );
  const words = useMemo(
    () => studyWords({ units, ownCells, limits: ownLimits }),
    [units, ownCells, ownLimits],
  );
  const byResult = useMemo(() => limitsByResult(ownLimits), [ownLimits]);
  const holds = useMemo(() => (value === undefined ? '' : whatHolds(value, words)), [value, words]);
  const options = useMemo(() => [...resultOptions, ...ownCells], [ownCells]);
  const varied = useMemo(() => inputOptions({ ownCells }), [ownCells]);

  const pick = (i: number, name: string): void =>
    setPicked(drawn.includes(name) ? drawn : drawn.map((it, n) => (n === i ? name : it)));
  const chartHeight = Math.max(LEAST_HEIGHT, Math.round((height - WORDS) * (drawn.length > 1 ? 0.8 : 1)));

  return (
    <section
      className="sweep"
      data-view="sweep"
      aria-label="Sweep"
      aria-busy={stale}
      data-stale={stale ? '' : undefined}
    >
      {drawn.map((result, i) => (
        <div className="sweep-one" key={result}>
          <div className="sweep-ask type-small">
            <Chooser says="Result drawn" value={result} options={options} onPick={(name) => pick(i, name)}>
              {labelOf(result, plan)}
            </Chooser>
            {i === 0 && (
              <>
                <span>against</span>
                <Chooser says="Varied" value={input} options={varied} onPick={(name) => set({ input: name })}>
                  {labelOf(input, plan)}
                </Chooser>
              </>
            )}
            {drawn.length > 1 && (
              <button
                type="button"
                className="base-plain-button base-soft"
                aria-label={`Leave out ${labelOf(result, plan)}`}
                onClick={() => setPicked(drawn.filter((it) => it !== result))}
              >
                leave out
              </button>
            )}
          </div>
          {why === undefined && value !== undefined && cell !== undefined ? (
            <SweepChart
              swept={value}
              index={i}
              cell={cell}
              unit={unitOf(result, plan)}
              units={units}
              words={words}
              limits={byResult.get(result) ?? NO_LIMITS}
              height={chartHeight}
              scenario={compares ? (plan.active ?? BASE) : undefined}
              others={others}
            />
          ) : (
            <div className="sweep-frame sweep-axes" style={{ height: chartHeight - AXES }}>
              <p className="type-small">
                {why !== undefined
                  ? `The sweep could not be made: ${why}`
                  : progress === undefined
                    ? 'Working it out.'
                    : `${progress.done} of ${progress.of}.`}
              </p>
            </div>
          )}
        </div>
      ))}
      {why === undefined && (
        <p className="sweep-holds type-small">
          {holds}
          {stale && value !== undefined && (
            <span className="sweep-stale base-soft"> Being worked out again.</span>
          )}
        </p>
      )}
      <div className="sweep-more type-small">
        {drawn.length < MOST_RESULTS && (
          <Chooser
            says="Another result"
            value={undefined}
            options={options.filter((it) => !drawn.includes(it.name))}
            onPick={(name) => setPicked([...drawn, name])}
          >
            Draw another result
          </Chooser>
        )}
        {canCompare && (
          <label className="sweep-compare">
            <input
              type="checkbox"
              checked={isCompared}
              onChange={(event) => set({ scenarios: event.target.checked })}
            />
            Scenarios over it
          </label>
        )}
        {compares && left.length > 0 && (
          <p className="base-soft">
            {scenarios.length} of {all.length} other scenarios are laid over it; without a line:{' '}
            {listed(left)}.
          </p>
        )}
      </div>
      {why === undefined && value !== undefined && <SweepTable swept={value} plan={plan} words={words} />}
    </section>
  );
}
