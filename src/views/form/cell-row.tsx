import { memo, type ReactNode, useCallback, useId, useState } from 'react';
import type { InputCell } from '../../plan/template.ts';
import type { Session } from '../../session/session.ts';
import { unusedWords } from '../../session/unused.ts';
import { EntryField } from '../parts/entry-field.tsx';
import { isPicked } from '../parts/options.ts';
import { PickField } from '../parts/pick-field.tsx';
import { pointAt, useIsPointed } from '../parts/pointed.ts';
import { Refused } from '../parts/refused.tsx';
import { piecesOf } from '../parts/show.ts';
import { Slider } from '../parts/slider.tsx';
import { Stepper } from '../parts/stepper.tsx';
import { TakeOver } from '../parts/take-over.tsx';
import { useUnits } from '../parts/use-units.ts';
import { useChanged, useDraft, useLook, useSession } from '../use-session.ts';
import { CellMeta } from './cell-meta.tsx';
import { CellNotes } from './cell-notes.tsx';
import './cell-row.css';

const useValue = (name: string) => useLook(useCallback((it: Session) => it.value(name), [name]));

interface Props {
  readonly cell: InputCell;
  /** Shown alone on the screen: its place among the rest, how to read it, and a small drawing of what is measured. */
  readonly alone?: ReactNode;
}

/** One input of the form: name, field, unit, where it comes from; and, opened, how to read it. */
export const CellRow = memo(function CellRow({ cell, alone }: Props) {
  const { name } = cell;
  const labelId = useId();
  const fieldId = useId();
  const whyId = useId();
  const [open, setOpen] = useState(false);
  const [told, setTold] = useState<string>();
  const changed = useChanged(name);
  const pointed = useIsPointed(name);
  const draft = useDraft(name);
  const unused = useLook(useCallback((it: Session) => unusedWords(name, (other) => it.value(other)), [name]));
  const why = draft?.why ?? told;
  const isChoice = cell.kind === 'choice';
  const follows = useLook(useCallback((it: Session) => it.reading(name)?.formula !== undefined, [name]));
  const steps = isChoice && !isPicked(cell) && !follows;
  const field = {
    cell,
    id: fieldId,
    labelledBy: labelId,
    describedBy: why === undefined ? undefined : whyId,
  };
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset cannot be laid out as a grid of label, field and unit
    <div
      role="group"
      aria-labelledby={labelId}
      className={`cell ${steps ? 'cell-choice' : ''} ${alone === undefined ? '' : 'cell-alone'}`}
      data-cell={name}
      data-changed={changed ? '' : undefined}
      data-pointed={pointed ? '' : undefined}
      data-unused={unused === undefined ? undefined : ''}
      onPointerEnter={() => pointAt(name)}
      onPointerLeave={() => pointAt(undefined)}
      onFocus={() => pointAt(name)}
    >
      {alone}
      <label className="cell-label type-label" id={labelId} htmlFor={fieldId}>
        {cell.label}
      </label>
      <span className="cell-field">
        {steps && <Stepper cell={cell} direction={-1} onTold={setTold} />}
        <Shown name={name}>
          {isPicked(cell) && !follows ? <PickField {...field} onTold={setTold} /> : <EntryField {...field} />}
        </Shown>
        {steps && <Stepper cell={cell} direction={1} onTold={setTold} />}
      </span>
      <CellUnit cell={cell} />
      <p className="cell-meta type-small">
        <CellMeta cell={cell} unused={unused} />
        <TakeOver name={name} />
        <button
          type="button"
          className="cell-more base-plain-button"
          aria-expanded={open}
          onClick={() => setOpen(!open)}
        >
          {open ? 'less' : 'more'}
          <span className="base-spoken"> on: {cell.label}</span>
        </button>
      </p>
      {steps && cell.usual !== undefined && unused === undefined && (
        <span className="cell-slider">
          <Slider cell={cell} onTold={setTold} />
        </span>
      )}
      {why !== undefined && (
        <CellRefusal cell={cell} id={whyId} why={why} onDone={() => setTold(undefined)} />
      )}
      {open && <CellNotes cell={cell} />}
    </div>
  );
});

/** Carries the value in base units for whoever reads the page. */
function Shown({ name, children }: { readonly name: string; readonly children: ReactNode }) {
  const value = useValue(name);
  return (
    <span className="cell-value" data-name={name} data-value={value === null ? '' : String(value)}>
      {children}
    </span>
  );
}

function CellUnit({ cell }: { readonly cell: InputCell }) {
  const units = useUnits();
  const value = useValue(cell.name);
  if (isPicked(cell)) return null;
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

interface RefusalProps {
  readonly cell: InputCell;
  readonly id: string;
  readonly why: string;
  readonly onDone: () => void;
}

function CellRefusal({ cell, id, why, onDone }: RefusalProps) {
  const session = useSession();
  const units = useUnits();
  const value = useValue(cell.name);
  const [piece] = piecesOf(value, cell.unit, units);
  const drop = (): void => {
    session.dropDraft(cell.name);
    onDone();
  };
  return (
    <Refused
      id={id}
      why={why}
      figure={value === null ? '' : (piece?.figure ?? '')}
      unit={piece?.unit ?? ''}
      onDrop={drop}
    />
  );
}
