import { useMemo, useRef } from 'react';
import { inputNamed, inputs } from '../../plan/book.ts';
import { turningAsk } from '../../session/studies/asks.ts';
import { studyWords } from '../../session/study-words.ts';
import { wholeStops } from '../../studies/turning/whole-stops.ts';
import { turningSentence, turnSentence } from '../../studies/turning/words.ts';
import type { LimitTurns } from '../../studies/turning.ts';
import { limitTitle } from '../../workbook/limit-words.ts';
import { Chooser } from '../parts/chooser.tsx';
import { labelOf } from '../parts/show.ts';
import { StudyWait } from '../parts/study-wait.tsx';
import { useBox } from '../parts/use-box.ts';
import { useStudy } from '../parts/use-study.ts';
import { useStudySettings } from '../parts/use-study-settings.ts';
import { useJudgement, usePlan } from '../use-session.ts';
import { Axis } from './axis.tsx';
import { Strip } from './strip.tsx';
import './turning.css';

const options = inputs.filter(
  (it) => (it.type === 'number' || it.type === 'whole') && it.usual !== undefined,
);
const FIRST = 'shim_count';
const NO_STEPS: readonly number[] = [];

/** Limits that turn, the one that turns nearest to the present value first. */
function nearestFirst(limits: readonly LimitTurns[], present: number | null): readonly LimitTurns[] {
  const away = ({ turns }: LimitTurns): number =>
    Math.min(...turns.map(({ at }) => Math.abs(at - (present ?? at))));
  return limits.filter((it) => it.turns.length > 0).sort((a, b) => away(a) - away(b));
}

/** Every value of one input at which a limit turns. */
export function TurningPanel() {
  const plan = usePlan();
  const { limits } = useJudgement();
  const [settings, set] = useStudySettings('turning');
  const asked = settings['input'];
  const input = options.some((it) => it.name === asked) ? String(asked) : FIRST;
  const ask = useMemo(() => turningAsk(plan, plan.active, input), [plan, input]);
  const state = useStudy({ study: 'turning', ask, urgent: true, key: input });
  const words = useMemo(() => studyWords(plan), [plan]);
  const frame = useRef<HTMLDivElement>(null);
  const width = useBox(frame)?.width;
  const found = state.value?.ask.input === input ? state.value : undefined;
  const cell = inputNamed(input);
  const titles = new Map(limits.map((it) => [it.name, limitTitle(it)]));
  const title = ({ limit }: LimitTurns): string => titles.get(limit) ?? limit;
  const turn = found === undefined ? [] : nearestFirst(found.limits, found.ask.present);
  const still = found?.limits.filter((it) => it.turns.length === 0 && it.moved) ?? [];
  const unmoved = found?.limits.filter((it) => it.turns.length === 0 && !it.moved) ?? [];
  const wordsOf = words.cell(input);
  const steps = useMemo(
    () => (found?.ask.whole === true ? wholeStops(found.ask.low, found.ask.high, found.ask.only) : NO_STEPS),
    [found],
  );
  return (
    <section
      className="turning"
      data-view="turning"
      aria-label="Turning values"
      aria-busy={state.stale}
      data-stale={state.stale ? '' : undefined}
    >
      <div className="turning-ask">
        <span>Where limits turn along</span>
        <Chooser says="Input" value={input} options={options} onPick={(name) => set({ input: name })}>
          {labelOf(input, plan)}
        </Chooser>
      </div>
      {found !== undefined && <p className="type-lead">{turningSentence(found, words)}</p>}
      <div ref={frame} className="turning-frame">
        {found !== undefined && width !== undefined && turn.length > 0 && (
          <Axis
            low={found.ask.low}
            high={found.ask.high}
            whole={cell?.type === 'whole'}
            present={found.ask.present}
            width={width}
            figure={wordsOf.figure}
            bare={wordsOf.bare}
          />
        )}
      </div>
      {found !== undefined && (
        <ul className="turning-list">
          {turn.map((it) => (
            <li key={it.limit} className="turning-row" data-turning={it.limit}>
              <h3 className="type-label">{title(it)}</h3>
              {width !== undefined && (
                <Strip
                  of={it}
                  low={found.ask.low}
                  high={found.ask.high}
                  present={found.ask.present}
                  width={width}
                  steps={steps}
                />
              )}
              <p className="type-small">{turnSentence(it, found, words)}</p>
            </li>
          ))}
        </ul>
      )}
      {found !== undefined && still.length > 0 && (
        <>
          <h3 className="type-section turning-section">Moved by it, and never turning</h3>
          <ul className="turning-still type-small">
            {still.map((it) => (
              <li key={it.limit} data-turning={it.limit}>
                <span className="type-label">{title(it)}</span>
                <span>{turnSentence(it, found, words)}</span>
              </li>
            ))}
          </ul>
        </>
      )}
      {unmoved.length > 0 && (
        <p className="type-small base-soft">Not moved by it: {unmoved.map(title).join(', ')}.</p>
      )}
      <StudyWait says="Turning values" state={state} />
    </section>
  );
}
