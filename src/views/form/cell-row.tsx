import { memo, type ReactNode, useCallback, useId, useState } from 'react';
import type { Origin } from '../../plan/plan.ts';
import { readingOf } from '../../plan/plan.ts';
import { editGoesTo } from '../../plan/edit/reading.ts';
import { setLocked } from '../../plan/edit/settings.ts';
import type { InputCell } from '../../plan/template.ts';
import { EntryField } from '../parts/entry-field.tsx';
import { Icon } from '../parts/icon.tsx';
import { PickField } from '../parts/pick-field.tsx';
import { piecesOf } from '../parts/show.ts';
import { Slider } from '../parts/slider.tsx';
import { Stepper } from '../parts/stepper.tsx';
import { useAnswer, useChanged, useLook, usePlan, useReading, useSession } from '../use-session.ts';
import { CellNotes } from './cell-notes.tsx';
import './cell-row.css';

const ORIGIN_WORD: Readonly<Record<Origin, string>> = {
  reading: 'reading',
  manual: 'gear’s manual',
  'stand-in': 'stand-in',
  assumed: 'assumed',
  choice: '',
};

const isPicked = (cell: InputCell): boolean => cell.type === 'flag' || cell.type === 'word';

interface Props {
  readonly cell: InputCell;
  /** A small drawing of what is read, shown where there is room for one reading at a time. */
  readonly picture?: ReactNode;
  readonly onPoint?: ((name: string | undefined) => void) | undefined;
}

/** One input of the form: name, field, unit, where it comes from; and, opened, how to read it. */
export const CellRow = memo(function CellRow({ cell, picture, onPoint }: Props) {
  const labelId = useId();
  const [open, setOpen] = useState(false);
  const changed = useChanged(cell.name);
  const isChoice = cell.kind === 'choice';
  const steps = isChoice && !isPicked(cell);
  return (
    <div
      className={`cell ${isChoice ? 'cell-choice' : ''}`}
      data-cell={cell.name}
      data-changed={changed ? '' : undefined}
      onPointerEnter={() => onPoint?.(cell.name)}
      onPointerLeave={() => onPoint?.(undefined)}
      onFocus={() => onPoint?.(cell.name)}
    >
      {picture}
      <button className="cell-label type-label" type="button" aria-expanded={open} onClick={() => setOpen(!open)}>
        <span id={labelId}>{cell.label}</span>
      </button>
      <span className="cell-field">
        {steps && <Stepper cell={cell} direction={-1} />}
        <CellValue cell={cell} labelledBy={labelId} />
        {steps && <Stepper cell={cell} direction={1} />}
      </span>
      <CellUnit cell={cell} />
      <CellOrigin cell={cell} />
      {steps && cell.usual !== undefined && (
        <span className="cell-slider">
          <Slider cell={cell} />
        </span>
      )}
      {open && <CellNotes cell={cell} />}
      {isChoice && open && <CellLock cell={cell} />}
    </div>
  );
});

function CellValue({ cell, labelledBy }: { readonly cell: InputCell; readonly labelledBy: string }) {
  const reading = useReading(cell.name);
  const answer = useAnswer(cell.name);
  const value = answer?.value ?? reading?.value ?? null;
  return (
    <span className="cell-value" data-name={cell.name} data-value={value === null ? '' : String(value)}>
      {isPicked(cell) ? (
        <PickField cell={cell} labelledBy={labelledBy} />
      ) : (
        <EntryField cell={cell} labelledBy={labelledBy} />
      )}
    </span>
  );
}

function CellUnit({ cell }: { readonly cell: InputCell }) {
  const { units } = usePlan();
  const reading = useReading(cell.name);
  const answer = useAnswer(cell.name);
  if (isPicked(cell)) return <span className="cell-unit" />;
  const value = answer?.value ?? reading?.value ?? null;
  const [first, second] = piecesOf(value ?? 0, cell.unit, units);
  return (
    <span className="cell-unit type-small">
      {first?.unit}
      {second !== undefined && value !== null && (
        <span className="cell-inches">
          {second.figure} {second.unit}
        </span>
      )}
    </span>
  );
}

function CellOrigin({ cell }: { readonly cell: InputCell }) {
  const reading = useReading(cell.name);
  const where = useLook(
    useCallback(
      (it) => {
        const target = editGoesTo(it.plan, cell.name);
        return target !== null && readingOf(it.plan, cell.name, null) !== it.reading(cell.name) ? target : '';
      },
      [cell.name],
    ),
  );
  const locked = useLook(useCallback((it) => it.plan.locked.has(cell.name), [cell.name]));
  const word = reading?.formula !== undefined ? 'from other cells' : reading === undefined ? '' : ORIGIN_WORD[reading.origin];
  return (
    <span className="cell-origin type-small">
      {locked && (
        <span className="cell-locked">
          <Icon name="lock" /> already drilled
        </span>
      )}
      {word}
      {where !== '' && <span>{word === '' ? '' : ' · '}in “{where}”</span>}
    </span>
  );
}

function CellLock({ cell }: { readonly cell: InputCell }) {
  const session = useSession();
  const locked = useLook(useCallback((it) => it.plan.locked.has(cell.name), [cell.name]));
  return (
    <label className="cell-lock type-small">
      <input
        type="checkbox"
        checked={locked}
        onChange={() =>
          session.edit(locked ? `Lock off ${cell.label}` : `Lock on ${cell.label}`, (plan) =>
            setLocked(plan, cell.name, !locked),
          )
        }
      />
      Already drilled: nothing may change it
    </label>
  );
}
