import { memo, type ReactNode, useMemo, useState } from 'react';
import { standingOf } from '../../session/standing.ts';
import { roomWords } from '../../session/limit-words.ts';
import type { LimitAnswer } from '../../workbook/judged.ts';
import { Mark, markedOf } from '../parts/mark.tsx';
import { labelOf, shortOf, shown, unitOf } from '../parts/show.ts';
import { StateWord } from '../parts/state-word.tsx';
import { useJudgement, usePlan, useReady } from '../use-session.ts';
import { LimitNotes } from './limit-notes.tsx';
import './limit-board.css';

interface Props {
  /** What mends a limit, shown when it is opened. */
  readonly remedies?: (limit: string) => ReactNode;
  /** Where a choice that moves a limit is found. */
  readonly onChoice?: (name: string) => void;
}

/** Every limit: those past first, then those without an answer, then near, then inside with the least room first. */
export function LimitBoard({ remedies, onChoice }: Props) {
  const judgement = useJudgement();
  const ready = useReady();
  const plan = usePlan();
  const standing = useMemo(() => standingOf(judgement.limits), [judgement.limits]);
  const [open, setOpen] = useState<string>();
  const toggle = (name: string): void => setOpen(open === name ? undefined : name);
  const rows = (limits: readonly LimitAnswer[], small: boolean) =>
    limits.map((limit) => (
      <BoardRow key={limit.name} limit={limit} small={small} open={open === limit.name} onToggle={toggle}>
        {open === limit.name && (
          <LimitNotes limit={limit} {...(onChoice === undefined ? {} : { onChoice })}>
            {remedies?.(limit.name)}
          </LimitNotes>
        )}
      </BoardRow>
    ));
  return (
    <div className="board" data-view="board">
      <h2 className="type-section board-title">Limits</h2>
      {!ready && <p className="type-small base-soft">Working out the limits.</p>}
      {rows([...standing.past, ...standing.unanswered, ...standing.near], false)}
      {standing.inside.length > 0 && (
        <p className="type-small base-soft board-count">{standing.inside.length} inside, least room first</p>
      )}
      {rows(standing.inside, true)}
      {standing.notApplying.length > 0 && (
        <p className="board-rest type-small base-soft">
          Do not apply here:{' '}
          {standing.notApplying.map((limit, at) => (
            <span key={limit.name} data-limit={limit.name} data-state={limit.verdict.state}>
              {at === 0 ? '' : ', '}
              {shortOf(limit.name, plan)}
            </span>
          ))}
          .
        </p>
      )}
      <p className="type-small board-rest">
        <a href="#/not-judged">What is not judged here</a>
      </p>
    </div>
  );
}

interface RowProps {
  readonly limit: LimitAnswer;
  readonly small: boolean;
  readonly open: boolean;
  readonly onToggle: (name: string) => void;
  readonly children: ReactNode;
}

const BoardRow = memo(function BoardRow({ limit, small, open, onToggle, children }: RowProps) {
  const plan = usePlan();
  const unit = unitOf(limit.result, plan);
  const { state } = limit.verdict;
  const value = limit.graded && limit.value !== undefined ? shown(limit.value, unit, plan.units) : '';
  const room = state === 'no answer' ? (limit.why ?? 'Something it needs is missing.') : roomWords(limit, unit, plan.units);
  return (
    <div
      className={`board-row ${small ? 'board-row-small' : ''} board-row-${state.replace(' ', '-')}`}
      data-limit={limit.name}
      data-state={state}
    >
      <button type="button" className="board-line" aria-expanded={open} onClick={() => onToggle(limit.name)}>
        <Mark limit={markedOf(limit)} small={small} />
        <span className="board-name type-label">{small ? shortOf(limit.result, plan) : labelOf(limit.result, plan)}</span>
        {small ? (
          <span className="base-spoken">{state}</span>
        ) : (
          <span className="board-word">
            <StateWord state={state} />
          </span>
        )}
        {!small && <span className="board-value type-value">{value}</span>}
        <span className="board-room type-small">{room}</span>
      </button>
      {children}
    </div>
  );
});
