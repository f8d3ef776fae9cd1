import { memo, type ReactNode, useMemo, useState } from 'react';
import { standingOf } from '../../session/standing.ts';
import type { LimitAnswer } from '../../workbook/judged.ts';
import { judgedUnit, limitTitle, roomWords, secondWords, valueWords } from '../../workbook/limit-words.ts';
import { Mark, markedOf } from '../parts/mark.tsx';
import { pointAt } from '../parts/pointed.ts';
import { StateWord } from '../parts/state-word.tsx';
import { useNothingRead } from '../parts/use-nothing-read.ts';
import { useUnits } from '../parts/use-units.ts';
import { useChanged, useJudgement, useReady } from '../use-session.ts';
import { LimitNotes } from './limit-notes.tsx';
import './limit-board.css';

interface Props {
  /** What mends a limit, shown when it is opened. */
  readonly remedies?: (limit: string) => ReactNode;
  /** The limit that is opened from the start. */
  readonly opened?: string | undefined;
}

/** Every limit: those outside first, what cannot be built before the rest, then those without an answer, then near, then inside with the least room first. */
export function LimitBoard({ remedies, opened }: Props) {
  const { limits } = useJudgement();
  const ready = useReady();
  const isNew = useNothingRead();
  const standing = useMemo(() => standingOf(limits), [limits]);
  const [open, setOpen] = useState<string | undefined>(opened);
  const rows = (shown: readonly LimitAnswer[], small: boolean) => (
    <ul className="board-list">
      {shown.map((limit) => (
        <BoardRow
          key={limit.name}
          limit={limit}
          small={small}
          open={open === limit.name}
          onToggle={setOpen}
          remedies={remedies}
        />
      ))}
    </ul>
  );
  const pressing = [...standing.outside, ...standing.unanswered, ...standing.near];
  const { inside, notApplying } = standing;
  return (
    <div className="board" data-view="board" data-new={isNew ? '' : undefined}>
      <h2 className="board-title type-section">Limits</h2>
      {!ready && <p className="board-note type-small base-soft">The limits are being worked out.</p>}
      {isNew && (
        <p className="board-note type-small">
          These are how the stand-ins would do. They say nothing about your boat yet.
        </p>
      )}
      {ready && pressing.length === 0 && (
        <p className="board-note type-small">
          None is outside, none is near, and each that applies has an answer.
        </p>
      )}
      {pressing.length > 0 && rows(pressing, false)}
      {inside.length > 0 && (
        <h3 className="board-note type-small base-soft">{inside.length} inside, least room first</h3>
      )}
      {rows(inside, true)}
      {notApplying.length > 0 && (
        <p className="board-note type-small base-soft">
          Do not apply here:{' '}
          {notApplying.map((limit, at) => (
            <span key={limit.name} data-limit={limit.name} data-state={limit.verdict.state}>
              {at === 0 ? '' : ', '}
              {limitTitle(limit)}
            </span>
          ))}
          .
        </p>
      )}
      <p className="board-note type-small">
        <a href="#/not-judged">What no limit covers</a>
      </p>
    </div>
  );
}

interface RowProps {
  readonly limit: LimitAnswer;
  /** One line: a limit that is inside. */
  readonly small: boolean;
  readonly open: boolean;
  readonly onToggle: (name: string | undefined) => void;
  readonly remedies: Props['remedies'];
}

const BoardRow = memo(function BoardRow({ limit, small, open, onToggle, remedies }: RowProps) {
  const units = useUnits();
  const changed = useChanged(limit.result);
  const { state } = limit.verdict;
  const second = secondWords(limit.value, judgedUnit(limit), units);
  return (
    <li
      className={`board-row ${small ? 'board-row-small' : ''}`}
      data-limit={limit.name}
      data-state={state}
      data-changed={changed ? '' : undefined}
      onPointerEnter={() => pointAt(limit.result)}
      onPointerLeave={() => pointAt(undefined)}
    >
      <button
        type="button"
        className="board-line"
        aria-expanded={open}
        onClick={() => onToggle(open ? undefined : limit.name)}
      >
        <Mark limit={markedOf(limit)} small={small} />
        <span className="board-name type-label">{limitTitle(limit)}</span>
        {small ? (
          <span className="base-spoken">{state}</span>
        ) : (
          <span className="board-word">
            <StateWord state={state} />
          </span>
        )}
        {state === 'no answer' ? (
          <span className="board-why type-small">{limit.why ?? 'Something it needs is missing.'}</span>
        ) : (
          <>
            {!small && (
              <span className="board-value type-value">
                {valueWords(limit, units)}
                {second !== undefined && <span className="board-second type-small">{second}</span>}
              </span>
            )}
            <span className="board-room type-small">{roomWords(limit, units)}</span>
          </>
        )}
      </button>
      {open && <LimitNotes limit={limit}>{remedies?.(limit.name)}</LimitNotes>}
    </li>
  );
});
