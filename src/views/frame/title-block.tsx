import { type ReactNode, useId } from 'react';
import { switchTo } from '../../plan/edit/scenarios.ts';
import { setUnits } from '../../plan/edit/settings.ts';
import type { Units } from '../../plan/plan.ts';
import { standIns } from '../../plan/stand-ins.ts';
import { Icon } from '../parts/icon.tsx';
import { useLook, usePlan, useSession } from '../use-session.ts';
import './title-block.css';

interface Props {
  /** Whether, where and when the plan is kept. */
  readonly kept: ReactNode;
  readonly deckLight: boolean;
  readonly onDeckLight: (on: boolean) => void;
}

const undoes = (it: { readonly undoes: string | undefined }): string | undefined => it.undoes;
const redoes = (it: { readonly redoes: string | undefined }): string | undefined => it.redoes;

/** Plan, scenario, units, kept where and when, stand-ins: the page's only chrome. */
export function TitleBlock({ kept, deckLight, onDeckLight }: Props) {
  const plan = usePlan();
  const count = standIns(plan).length;
  return (
    <footer className="title" data-view="title">
      <div className="title-cell title-plan">
        <span className="title-head type-tick">Plan</span>
        <a className="title-text type-label" href="#/plan">
          {plan.title}
        </a>
      </div>
      <ScenarioPick />
      <UnitsPick />
      <div className="title-cell title-kept">
        <span className="title-head type-tick">Kept</span>
        <span className="title-text type-label">{kept}</span>
      </div>
      <div className="title-cell">
        <span className="title-head type-tick">Rests on</span>
        <span className="title-text type-label">
          {count} {count === 1 ? 'stand-in' : 'stand-ins'}
        </span>
      </div>
      <div className="title-cell title-actions">
        <UndoRedo />
        <label className="title-button type-label">
          <input
            type="checkbox"
            className="base-check"
            checked={deckLight}
            onChange={(event) => onDeckLight(event.target.checked)}
          />
          Deck light
        </label>
      </div>
    </footer>
  );
}

function ScenarioPick() {
  const session = useSession();
  const { active, scenarios } = usePlan();
  const id = useId();
  return (
    <div className="title-cell title-picked">
      <label className="title-head type-tick" htmlFor={id}>
        Scenario
      </label>
      <select
        id={id}
        className="title-pick type-label"
        value={active ?? ''}
        onChange={(event) => {
          const name = event.target.value === '' ? null : event.target.value;
          session.edit(`Show ${name ?? 'the base values'}`, (it) => switchTo(it, name));
        }}
      >
        <option value="">base values</option>
        {scenarios.map((it) => (
          <option key={it.name} value={it.name}>
            {it.name}
          </option>
        ))}
      </select>
    </div>
  );
}

const UNITS: readonly (readonly [Units, string])[] = [
  ['mm', 'mm'],
  ['in', 'inches'],
  ['both', 'both'],
];

function UnitsPick() {
  const session = useSession();
  const { units } = usePlan();
  const id = useId();
  return (
    <div className="title-cell title-picked">
      <label className="title-head type-tick" htmlFor={id}>
        Units
      </label>
      <select
        id={id}
        className="title-pick type-label"
        value={units}
        onChange={(event) => session.edit('Units', (it) => setUnits(it, event.target.value as Units))}
      >
        {UNITS.map(([unit, words]) => (
          <option key={unit} value={unit}>
            {words}
          </option>
        ))}
      </select>
    </div>
  );
}

function UndoRedo() {
  const session = useSession();
  const undo = useLook(undoes);
  const redo = useLook(redoes);
  return (
    <>
      <button
        type="button"
        className="title-button type-label"
        disabled={undo === undefined}
        onClick={() => session.undo()}
        aria-label={undo === undefined ? 'Undo' : `Undo: ${undo}`}
        title={undo}
      >
        <Icon name="undo" /> Undo
      </button>
      <button
        type="button"
        className="title-button type-label"
        disabled={redo === undefined}
        onClick={() => session.redo()}
        aria-label={redo === undefined ? 'Redo' : `Redo: ${redo}`}
        title={redo}
      >
        <Icon name="redo" /> Redo
      </button>
    </>
  );
}
