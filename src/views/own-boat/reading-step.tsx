import { type ReactNode, useId, useRef } from 'react';
import type { InputCell } from '../../plan/template.ts';
import { offByOf } from '../../session/own-boat/ashore.ts';
import { echoOf } from '../../session/own-boat/echo.ts';
import { hintsFor } from '../../session/own-boat/hints.ts';
import type { OwnBoatState } from '../../session/own-boat/own-boat.ts';
import { readAlone } from '../../session/own-boat/read-step.ts';
import { standInFor } from '../../session/own-boat/stand-in-for.ts';
import { brief } from '../../workbook/limit-words.ts';
import { Action } from '../parts/action.tsx';
import { shown } from '../parts/show.ts';
import { useSelectAll } from '../parts/use-select-all.ts';
import { LeanPick } from './lean-pick.tsx';
import { QuickKeys } from './quick-keys.tsx';

interface Props {
  readonly cell: InputCell;
  readonly state: OwnBoatState;
  /** Why it cannot be taken as typed. */
  readonly why: string | undefined;
  readonly picture: ReactNode;
  readonly onType: (text: string) => void;
  readonly onLean: (lean: string) => void;
  readonly onNext: (withKey: boolean) => void;
  readonly onLeave: () => void;
}

const ON_SCREEN: Readonly<Record<string, string>> = { deg: '°', '–': '' };

/** One reading: its picture, how it is measured, a field, and the stand-in for those who cannot read it now. */
export function ReadingStep({ cell, state, why, picture, onType, onLean, onNext, onLeave }: Props) {
  const id = useId();
  const { box, selectAll, onMouseDown } = useSelectAll();
  /** A key on the page goes behind what is typed. */
  const writing = useRef(false);
  const { answers } = state;
  const units = answers.units ?? 'both';
  const typed = state.typed.get(cell.name) ?? '';
  const read = readAlone(state, cell);
  const value = read?.ok ? read.reading.value : null;
  const isSlope = cell.name === 'transom_rake';
  const unit = cell.unit === 'mm' && units === 'in' ? 'in' : (ON_SCREEN[cell.unit] ?? cell.unit);
  const standIn = shown(standInFor(cell, answers).value, cell.unit, units);
  const offBy = offByOf(cell, answers.lying);
  const told = why ?? (read?.ok ? echoOf(cell, read.reading, units) : '');
  const write = (text: string): void => {
    onType(text);
    writing.current = true;
    box.current?.focus();
    writing.current = false;
  };
  return (
    <>
      {picture !== undefined && <div className="own-boat-picture">{picture}</div>}
      <p>{cell.help}</p>
      {hintsFor(cell, answers).map((hint) => (
        <p key={hint} className="own-boat-hint type-small">
          {hint}
        </p>
      ))}
      {isSlope && <LeanPick lean={answers.lean} onLean={onLean} />}
      <form
        className="own-boat-form"
        onSubmit={(event) => {
          event.preventDefault();
          onNext(true);
        }}
      >
        <label className="type-small base-soft" htmlFor={id}>
          {isSlope ? 'How many degrees, without a sign' : cell.short}
        </label>
        <span
          className="own-boat-field"
          data-name={cell.name}
          data-value={value === null ? '' : String(value)}
        >
          <input
            id={id}
            ref={box}
            className="own-boat-box"
            data-input={cell.name}
            type="text"
            inputMode="decimal"
            enterKeyHint="next"
            autoComplete="off"
            spellCheck={false}
            value={typed}
            aria-invalid={why === undefined ? undefined : true}
            aria-describedby={`${id}told`}
            onMouseDown={onMouseDown}
            onFocus={() => {
              if (!writing.current) selectAll();
            }}
            onChange={(event) => onType(event.target.value)}
          />
          <span className="own-boat-unit">{unit}</span>
        </span>
        <QuickKeys
          typed={typed}
          fractions={cell.unit === 'mm' && units === 'in'}
          sign={!isSlope && (cell.min ?? 0) < 0}
          onWrite={write}
        />
        <p
          className={why === undefined ? 'own-boat-told type-small' : 'own-boat-told own-boat-why type-small'}
          id={`${id}told`}
          role="status"
        >
          {told}
          {why === undefined && offBy > 0 && ` Counted as off by ${brief(offBy, cell.unit, units)} at most.`}
        </p>
        <div className="own-boat-doors">
          <Action plate onPress={() => onNext(false)}>
            Next
          </Action>
          <Action onPress={onLeave}>
            Take the stand-in, <span className="own-boat-once">{standIn}</span>
          </Action>
        </div>
        {state.left.has(cell.name) && <p className="type-small">The stand-in is taken.</p>}
      </form>
    </>
  );
}
