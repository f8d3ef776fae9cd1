import type { ReactNode } from 'react';
import { switchTo } from '../../plan/edit/scenarios.ts';
import { setUnits } from '../../plan/edit/settings.ts';
import type { Units } from '../../plan/plan.ts';
import { standIns } from '../../session/standing.ts';
import { Icon } from '../parts/icon.tsx';
import { useLook, usePlan, useSession } from '../use-session.ts';

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
  const session = useSession();
  const plan = usePlan();
  const undo = useLook(undoes);
  const redo = useLook(redoes);
  const count = standIns(plan).length;
  return (
    <footer className="title" data-view="title">
      <div className="title-cell title-plan">
        <span className="type-tick base-soft">Plan</span>
        <a className="type-label title-strong" href="#/plan">
          {plan.title}
        </a>
      </div>
      <label className="title-cell">
        <span className="type-tick base-soft">Scenario</span>
        <select
          className="type-label title-pick"
          value={plan.active ?? ''}
          onChange={(event) => {
            const name = event.target.value === '' ? null : event.target.value;
            session.edit(`Show ${name ?? 'base values'}`, (it) => switchTo(it, name));
          }}
        >
          <option value="">base values</option>
          {plan.scenarios.map((it) => (
            <option key={it.name} value={it.name}>
              {it.name}
            </option>
          ))}
        </select>
      </label>
      <label className="title-cell">
        <span className="type-tick base-soft">Units</span>
        <select
          className="type-label title-pick"
          value={plan.units}
          onChange={(event) => {
            const units = event.target.value as Units;
            session.edit('Units', (it) => setUnits(it, units));
          }}
        >
          <option value="mm">mm</option>
          <option value="in">inches</option>
          <option value="both">both</option>
        </select>
      </label>
      <div className="title-cell title-kept" aria-live="polite">
        <span className="type-tick base-soft">Kept</span>
        <span className="type-label">{kept}</span>
      </div>
      <div className="title-cell">
        <span className="type-tick base-soft">Rests on</span>
        <span className="type-label">
          {count} {count === 1 ? 'stand-in' : 'stand-ins'}
        </span>
      </div>
      <div className="title-cell title-actions">
        <button type="button" className="title-button type-label" disabled={undo === undefined} onClick={() => session.undo()} title={undo}>
          <Icon name="undo" /> Undo
        </button>
        <button type="button" className="title-button type-label" disabled={redo === undefined} onClick={() => session.redo()} title={redo}>
          <Icon name="redo" /> Redo
        </button>
        <label className="title-button type-label">
          <input type="checkbox" checked={deckLight} onChange={(event) => onDeckLight(event.target.checked)} />
          Deck light
        </label>
      </div>
    </footer>
  );
}
