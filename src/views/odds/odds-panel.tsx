import { useMemo } from 'react';
import { CERTAINTY, oddsAsk } from '../../session/studies/asks.ts';
import { leftOutSentence } from '../../session/studies/left-out.ts';
import { studyWords } from '../../session/study-words.ts';
import { followedSentence, togetherSentence } from '../../studies/odds/words.ts';
import type { Odds } from '../../studies/odds.ts';
import { lawsSentence } from '../../studies/uncertain/laws.ts';
import { limitTitle } from '../../workbook/limit-words.ts';
import { StudyWait } from '../parts/study-wait.tsx';
import { useStudy } from '../parts/use-study.ts';
import { useStudySettings } from '../parts/use-study-settings.ts';
import { useJudgement, usePlan } from '../use-session.ts';
import { OddsTable } from './odds-table.tsx';
import { ShareSetting } from './share-setting.tsx';
import './odds.css';

/** How sure it is that the limits hold, given how far every reading may be off. */
export function OddsPanel() {
  const plan = usePlan();
  const { limits } = useJudgement();
  const [settings, set] = useStudySettings('odds');
  const ask = useMemo(() => oddsAsk(plan, plan.active, settings), [plan, settings]);
  const state = useStudy({ study: 'odds', ask, urgent: true, key: `${ask.share} ${ask.points}` });
  const words = useMemo(() => studyWords(plan), [plan]);
  const titles = new Map(limits.map((it) => [it.name, limitTitle(it)]));
  const title = (limit: string): string => titles.get(limit) ?? limit;
  const early = state.stale ? (state.progress?.soFar as Odds | undefined) : undefined;
  const found = early ?? state.value;
  const sure =
    found?.limits.filter(
      (it) => !it.worst.fails && it.sampled.hits === 0 && it.rare === undefined && it.room !== null,
    ) ?? [];
  const tools = useMemo(() => {
    const counts = new Map<string, number>();
    for (const { with: tool } of ask.errors) {
      if (tool !== undefined) counts.set(tool, (counts.get(tool) ?? 0) + 1);
    }
    return [...counts].filter(([, count]) => count > 1).sort(([, a], [, b]) => b - a);
  }, [ask]);
  return (
    <section
      className="odds"
      data-view="odds"
      aria-label="Odds"
      aria-busy={state.stale}
      data-stale={state.stale ? '' : undefined}
    >
      <h2 className="type-section">With every reading somewhere within what it may be off</h2>
      {found !== undefined && (
        <>
          <p className="type-lead">{togetherSentence(found, CERTAINTY, words)}</p>
          {found.first === true && (
            <p className="type-small">
              A first estimate, from {found.together.sampled.count.toLocaleString('en-GB')} draws and the
              nearest worst cases alone; closer figures follow.
            </p>
          )}
          <OddsTable odds={found} words={words} title={title} />
          {found.followed.length > 0 && (
            <details className="type-small">
              <summary>How far what follows the survey or other cells may be off</summary>
              <ul className="odds-followed">
                {found.followed.map((it) => (
                  <li key={it.name} data-followed={it.name}>
                    {followedSentence(it, CERTAINTY, words)}
                  </li>
                ))}
              </ul>
            </details>
          )}
          {sure.length > 0 && (
            <p className="type-small">
              Hold even in the worst case found{found.first === true && ' so far'}, and failed in none of{' '}
              {found.together.sampled.count.toLocaleString('en-GB')} draws:{' '}
              {sure.map((it) => title(it.limit)).join(', ')}.
            </p>
          )}
        </>
      )}
      <StudyWait says="The odds" state={state} />
      <label className="odds-fine type-small">
        <input
          type="checkbox"
          checked={settings['fine'] === true}
          onChange={(event) => set({ fine: event.target.checked })}
        />
        Closer intervals, from 102,400 draws
      </label>
      <ShareSetting share={ask.share} tools={tools} onPick={(share) => set({ share })} />
      <p className="type-small base-soft">
        {lawsSentence(ask.errors, words)} {leftOutSentence(plan, plan.active)}
      </p>
    </section>
  );
}
