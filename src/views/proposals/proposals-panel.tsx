import { useCallback, useMemo, useState } from 'react';
import type { Plan } from '../../plan/plan.ts';
import type { Session } from '../../session/session.ts';
import { leftOutSentence } from '../../session/studies/left-out.ts';
import { freeIn, proposalsCall } from '../../session/studies/proposals-call.ts';
import { studyWords } from '../../session/study-words.ts';
import { tryValues } from '../../session/try-values.ts';
import { inputsOf, type Mount, type Proposals } from '../../studies/proposals/ask.ts';
import { changeWords, proposalSentence } from '../../studies/proposals/proposal-words.ts';
import { Action } from '../parts/action.tsx';
import { glide } from '../parts/glide.ts';
import { useStudy } from '../parts/use-study.ts';
import { useStudySettings } from '../parts/use-study-settings.ts';
import { useLook, usePlan, useSession } from '../use-session.ts';
import { ConflictView } from './conflict-view.tsx';
import { FreeList } from './free-list.tsx';
import { FrontPicture } from './front-picture.tsx';
import { ProposalsTable } from './proposals-table.tsx';
import './proposals.css';

/** Mounts that the search proposes over the choices that are freed, and what stands in the way when there is none. */
export function ProposalsPanel() {
  const session = useSession();
  const plan = usePlan();
  const [, set] = useStudySettings('proposals');
  useLook(useCallback((it: Session) => it.value('strut_count'), []));
  const free = freeIn(plan, session);
  const { units, ownCells, limits } = plan;
  const words = useMemo(() => studyWords({ units, ownCells, limits }), [units, ownCells, limits]);
  const names = free.join(' ');
  const call = useMemo(() => proposalsCall(plan, session, names.split(' ')), [plan, session, names]);
  const { value, stale, why, progress } = useStudy(call);
  const found = stale ? ((progress?.soFar as Proposals | undefined) ?? value) : value;
  const { present = [], freed = [] } = call?.ask ?? {};
  const inputs = inputsOf({ freed });
  const changes = (mount: Mount): string => changeWords(mount, present, freed, inputs, words);

  const [told, setTold] = useState<string>();
  const [tried, setTried] = useState<Plan>();
  const attempt = (mount: Mount): void => {
    glide();
    const values = new Map(inputs.map((name, n) => [name, mount.values[n] as number]));
    const done = tryValues(session, values, 'A proposal tried');
    setTold(done.ok ? undefined : done.why);
    setTried(done.ok ? session.plan : undefined);
  };

  return (
    <section
      className="proposals"
      data-view="proposals"
      aria-label="Proposals"
      aria-busy={stale && call !== undefined}
    >
      <FreeList plan={plan} free={free} onFree={(names) => set({ free: names })} />
      {call === undefined && <p>Tick at least one choice: the search changes only what is ticked.</p>}
      {why !== undefined && <p>Proposals could not be worked out: {why}</p>}
      {call !== undefined && why === undefined && (
        <p className="proposals-said type-small" aria-live="polite">
          <span className="base-soft">
            {stale
              ? progress === undefined
                ? 'Looking for mounts.'
                : `${progress.stage ?? 'Looking for mounts'}: ${progress.done.toLocaleString('en')} of ${progress.of.toLocaleString('en')}.`
              : `${value?.looked.toLocaleString('en') ?? 0} mounts tried.`}
          </span>
          {tried === plan && (
            <Action icon="undo" says="Undo the proposal tried" onPress={() => session.undo()}>
              Undo
            </Action>
          )}
        </p>
      )}
      {told !== undefined && <p role="alert">{told}</p>}
      {call !== undefined && why === undefined && found !== undefined && (
        <>
          {found.conflict !== undefined && (
            <ConflictView conflict={found.conflict} changes={changes} words={words} />
          )}
          <FrontPicture found={found} byShims={inputs.includes('shim_count')} />
          <ol>
            {found.proposals.map((proposal, n) => (
              <li className="proposal" key={proposal.values.join(' ')}>
                <span className="proposal-number">{n + 1}</span>
                <div>
                  <p className="proposal-changes">{changes(proposal)}</p>
                  <p className="type-small">{proposalSentence(proposal, words)}</p>
                </div>
                <Action says={`Try it: proposal ${n + 1}`} onPress={() => attempt(proposal)}>
                  Try it
                </Action>
              </li>
            ))}
          </ol>
          <ProposalsTable found={found} words={words} />
          <p className="type-small base-soft">
            {leftOutSentence(plan, plan.active, 'Left out of their odds')}
          </p>
        </>
      )}
    </section>
  );
}
