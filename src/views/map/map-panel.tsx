import { useMemo, useState } from 'react';
import { worstFirst } from '../../calc/limits/worst-first.ts';
import { results as resultCells } from '../../plan/book.ts';
import { axisOf } from '../../session/studies/map-axis.ts';
import type { StudyCall } from '../../session/studies/registry.ts';
import { studyWords } from '../../session/study-words.ts';
import type { MapAsk } from '../../studies/map/map.ts';
import { mapSentence } from '../../studies/map/map-words.ts';
import { Action } from '../parts/action.tsx';
import { Chooser } from '../parts/chooser.tsx';
import { labelOf, unitOf } from '../parts/show.ts';
import { useStudy } from '../parts/use-study.ts';
import { useStudySettings } from '../parts/use-study-settings.ts';
import { useJudgement, usePlan, useSession } from '../use-session.ts';
import { choiceOf, mapInputs, scenarioPlaces } from './map-ask.ts';
import { MapPicture } from './map-picture.tsx';
import { MapTable } from './map-table.tsx';
import { useAttempt } from './use-attempt.ts';
import './map.css';

/** Values along each side of the first, quick picture and of the last. */
const [COARSE, FINE] = [21, 101];

const call = (ask: MapAsk): StudyCall<'map'> => ({
  study: 'map',
  ask,
  // Where the inputs stand now belongs to the plan, not to the question.
  key: `${ask.x.input} ${ask.y.input} ${ask.results.join(' ')} ${ask.fineness}`,
  urgent: true,
});

/** What a map's contours are of. */
const resultOptions = resultCells.filter((cell) => cell.flag !== true);

/** Where two choices together keep every limit, and what fails where they do not. */
export function MapPanel() {
  const session = useSession();
  const plan = usePlan();
  const judgement = useJudgement();
  const [settings, set] = useStudySettings('map');
  const [worst] = useState(
    () => worstFirst(judgement.limits).find((it) => it.graded)?.result ?? 'rudder_gap',
  );
  const choice = useMemo(() => choiceOf(settings, worst, plan), [settings, worst, plan]);
  const { units, ownCells, limits: ownLimits } = plan;
  const words = useMemo(
    () => studyWords({ units, ownCells, limits: ownLimits }),
    [units, ownCells, ownLimits],
  );
  const sides = useMemo(() => mapInputs({ ownCells }), [ownCells]);
  const askOf = (fineness: number): MapAsk => ({
    scenario: plan.active,
    x: axisOf(choice.x, session.value(choice.x.name)),
    y: axisOf(choice.y, session.value(choice.y.name)),
    results: [choice.result],
    fineness,
  });
  const coarse = useStudy(call(askOf(COARSE)));
  const fine = useStudy(call(askOf(FINE)));
  const mapped = fine.stale && !coarse.stale ? coarse.value : (fine.value ?? coarse.value);
  const stale = fine.stale && coarse.stale;
  const why = coarse.why ?? fine.why;
  const progress = fine.progress ?? coarse.progress;
  const scenarios = useMemo(() => scenarioPlaces(plan, choice), [plan, choice]);
  const tries = useAttempt(choice);
  const widest = mapped?.widest;
  const isInCells = choice.x.type === 'whole' && choice.y.type === 'whole';

  return (
    <section className="map" data-view="map" aria-label="Map" aria-busy={stale}>
      <div className="map-ask type-small">
        <Chooser
          says="Across"
          value={choice.x.name}
          options={sides.filter((it) => it.name !== choice.y.name)}
          onPick={(name) => set({ across: name })}
        >
          {labelOf(choice.x.name, plan)}
        </Chooser>
        <span>across,</span>
        <Chooser
          says="Upwards"
          value={choice.y.name}
          options={sides.filter((it) => it.name !== choice.x.name)}
          onPick={(name) => set({ up: name })}
        >
          {labelOf(choice.y.name, plan)}
        </Chooser>
        <span>upwards, {isInCells ? 'figures' : 'contours'} of</span>
        <Chooser
          says={isInCells ? 'Figures of' : 'Contours of'}
          value={choice.result}
          options={[...resultOptions, ...ownCells]}
          onPick={(name) => set({ lines: name })}
        >
          {labelOf(choice.result, plan)}
        </Chooser>
      </div>
      {why !== undefined && <p className="type-small">The map could not be made: {why}</p>}
      {why === undefined && mapped === undefined && (
        <div className="map-empty type-small">
          <p>{progress === undefined ? 'Working it out.' : `${progress.done} of ${progress.of}.`}</p>
        </div>
      )}
      {why === undefined && mapped !== undefined && (
        <>
          <MapPicture
            mapped={mapped}
            choice={choice}
            unit={unitOf(choice.result, plan)}
            units={units}
            words={words}
            scenarios={scenarios}
            tries={tries}
          />
          <p className="map-says">{mapSentence(mapped, words)}</p>
          <p className="map-more type-small">
            {widest !== undefined && (
              <Action disabled={stale} onPress={() => tries.attempt(widest)}>
                {widest.room < 0 ? 'Try the nearest spot' : 'Try the widest spot'}
              </Action>
            )}
            {fine.stale && (
              <span className="map-late base-soft">
                {progress === undefined
                  ? 'Being worked out again.'
                  : `Being worked out finer: ${progress.done} of ${progress.of}.`}
              </span>
            )}
          </p>
          <MapTable mapped={mapped} plan={plan} words={words} result={choice.result} />
        </>
      )}
    </section>
  );
}
