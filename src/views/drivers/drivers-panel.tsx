import { useMemo } from 'react';
import { worstFirst } from '../../calc/limits/worst-first.ts';
import { driversAsk } from '../../session/studies/asks.ts';
import { driverWords } from '../../session/studies/driver-words.ts';
import { leftOutSentence } from '../../session/studies/left-out.ts';
import { errorsAmong } from '../../studies/drivers/varied.ts';
import { againSentence, moverSentence, shareSentence, soonestSentence } from '../../studies/drivers/words.ts';
import type { Drivers } from '../../studies/drivers.ts';
import { lawsSentence } from '../../studies/uncertain/laws.ts';
import { limitTitle } from '../../workbook/limit-words.ts';
import { Chooser } from '../parts/chooser.tsx';
import { StudyWait } from '../parts/study-wait.tsx';
import { useStudy } from '../parts/use-study.ts';
import { useStudySettings } from '../parts/use-study-settings.ts';
import { useJudgement, usePlan } from '../use-session.ts';
import { DriverTable } from './driver-table.tsx';
import './drivers.css';

/** What moves one limit, what would break or mend it soonest, and which measurement is worth taking again. */
export function DriversPanel() {
  const plan = usePlan();
  const { limits } = useJudgement();
  const [settings, set] = useStudySettings('drivers');
  const graded = limits.filter((it) => it.graded && it.verdict.state !== 'does not apply');
  const worst = worstFirst(graded)[0];
  const chosen = graded.find((it) => it.name === settings['limit']) ?? worst;
  const limit = chosen?.name;
  const [odds] = useStudySettings('odds');
  const ask = useMemo(
    () => (limit === undefined ? undefined : driversAsk(plan, plan.active, [limit], odds)),
    [plan, limit, odds],
  );
  const state = useStudy(ask && { study: 'drivers', ask, urgent: true, key: `${limit} ${ask.share}` });
  const words = useMemo(() => driverWords(plan), [plan]);
  const early = state.stale ? (state.progress?.soFar as Drivers | undefined) : undefined;
  const answer = early ?? state.value;
  const found = answer?.limits.find((it) => it.limit === limit);
  const again = found === undefined ? undefined : againSentence(found, words);
  const options = graded.map((it) => ({ name: it.name, label: limitTitle(it) }));
  const shared = found?.shares?.filter((it) => it.factor.shared) ?? [];
  return (
    <section
      className="drivers"
      data-view="drivers"
      aria-label="Drivers"
      aria-busy={state.stale}
      data-stale={state.stale ? '' : undefined}
    >
      {chosen !== undefined && (
        <div className="drivers-ask">
          <span>What moves</span>
          <Chooser says="Limit" value={limit} options={options} onPick={(name) => set({ limit: name })}>
            {limitTitle(chosen)}
          </Chooser>
        </div>
      )}
      {found !== undefined && (
        <>
          <p className="type-lead">{again ?? moverSentence(found, words)}</p>
          {answer?.first === true && (
            <p className="type-small">A first estimate; closer figures, and what turns it soonest, follow.</p>
          )}
          {found.drivers.some((it) => it.perOffBy !== 0) && ask !== undefined && (
            <DriverTable of={found} inputs={ask.inputs} words={words} plan={plan} />
          )}
          <div className="drivers-says type-text">
            {again !== undefined && <p>{moverSentence(found, words)}</p>}
            {answer?.first !== true && <p>{soonestSentence(found, words)}</p>}
            {found.shares !== undefined && <p>{shareSentence(found, words)}</p>}
            {shared.length === 0 && ask?.share === 0 && (
              <p className="type-small base-soft">
                Every reading is taken to be off by itself; readings with one instrument can share their error
                under <a href="#/studies/odds">Odds</a>.
              </p>
            )}
            {ask !== undefined && (
              <p className="type-small base-soft">
                {lawsSentence(errorsAmong(ask.inputs), words)} {leftOutSentence(plan, plan.active)}
              </p>
            )}
          </div>
        </>
      )}
      <StudyWait says="What moves this limit" state={state} />
    </section>
  );
}
