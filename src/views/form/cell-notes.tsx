import { useCallback, useId } from 'react';
import { followBase, setApart } from '../../plan/edit/reading.ts';
import { setLocked } from '../../plan/edit/settings.ts';
import { type Origin, readingOf } from '../../plan/plan.ts';
import type { InputCell } from '../../plan/template.ts';
import type { Done, Session } from '../../session/session.ts';
import { parseEntry } from '../../units/parse-entry.ts';
import { bareUnit } from '../parts/length-style.ts';
import { shown } from '../parts/show.ts';
import { TextEntry } from '../parts/text-entry.tsx';
import { useUnits } from '../parts/use-units.ts';
import { useLook, usePlan, useReading, useSession } from '../use-session.ts';

const ORIGINS: readonly (readonly [Origin, string])[] = [
  ['reading', 'my reading'],
  ['manual', 'the gear’s manual'],
  ['stand-in', 'a stand-in'],
  ['assumed', 'assumed'],
];

const NOTED = [
  ['who', 'Read by'],
  ['when', 'When'],
  ['with', 'With what'],
] as const;

interface Props {
  readonly cell: InputCell;
  /** Leaves out the help where it already stands. */
  readonly withHelp?: boolean;
}

/** How an input is read, how far it may be off, where it comes from, who read it when, and its lock. */
export function CellNotes({ cell, withHelp = true }: Props) {
  const session = useSession();
  const units = useUnits();
  const reading = useReading(cell.name);
  const { name, label, kind, usual, source } = cell;
  const isChoice = kind === 'choice';
  const unit = bareUnit(units);
  const setOffBy = (text: string): Done => {
    const entry = parseEntry(text, {
      name: `${label}, off by`,
      kind: cell.unit === 'mm' ? 'length' : 'number',
      unit: cell.unit,
      bare: unit,
    });
    if (!entry.ok) return entry;
    if (entry.empty || typeof entry.value !== 'number') {
      return { ok: false, why: `How far ${label} may be off is a number of at least 0.` };
    }
    return session.annotate(name, { offBy: entry.value });
  };
  const numeric = cell.type === 'number' || cell.type === 'whole';
  return (
    <div className="cell-notes">
      {withHelp && <p className="type-small">{cell.help}</p>}
      {(usual !== undefined || source !== undefined) && (
        <p className="type-small base-soft">
          {usual !== undefined &&
            `Usually ${shown(usual[0], cell.unit, unit)} to ${shown(usual[1], cell.unit, unit)}. `}
          {source !== undefined && `Source: ${source}.`}
        </p>
      )}
      <div className="cell-noted">
        {numeric && (
          <TextEntry
            label="Off by, at most"
            draftKey={`off by ${name}`}
            value={shown(reading?.offBy ?? cell.off_by, cell.unit, unit)}
            figure
            onPut={setOffBy}
          />
        )}
        {!isChoice && <OriginPick cell={cell} />}
        {NOTED.map(([key, words]) => (
          <TextEntry
            key={key}
            label={words}
            draftKey={`${key} ${name}`}
            value={reading?.[key] ?? ''}
            onPut={(typed) => session.annotate(name, { [key]: typed.trim() })}
          />
        ))}
        <TextEntry
          label="Note"
          draftKey={`note ${name}`}
          value={reading?.note ?? ''}
          onPut={(typed) => session.annotate(name, { note: typed.trim() })}
        />
      </div>
      {isChoice ? <CellLock cell={cell} /> : <CellApart cell={cell} />}
      <p className="type-small base-soft">In formulas: {name}</p>
    </div>
  );
}

function OriginPick({ cell }: { readonly cell: InputCell }) {
  const session = useSession();
  const reading = useReading(cell.name);
  const id = useId();
  return (
    <span className="text-entry">
      <label className="text-entry-label type-small" htmlFor={id}>
        Where from
      </label>
      <span className="entry-pick-frame">
        <select
          id={id}
          className="text-entry-box cell-origin"
          value={reading?.origin ?? 'stand-in'}
          onChange={(event) => session.annotate(cell.name, { origin: event.target.value as Origin })}
        >
          {ORIGINS.map(([origin, words]) => (
            <option key={origin} value={origin}>
              {words}
            </option>
          ))}
        </select>
      </span>
    </span>
  );
}

function CellLock({ cell }: { readonly cell: InputCell }) {
  const session = useSession();
  const locked = useLook(useCallback((it: Session) => it.plan.locked.has(cell.name), [cell.name]));
  return (
    <label className="cell-lock type-small">
      <input
        type="checkbox"
        className="base-check"
        checked={locked}
        onChange={() =>
          session.edit(locked ? `Lock off: ${cell.label}` : `Lock on: ${cell.label}`, (plan) =>
            setLocked(plan, cell.name, !locked),
          )
        }
      />
      Already drilled: nothing may change it
    </label>
  );
}

/** Lets a scenario have its own value of what otherwise holds for all. */
function CellApart({ cell }: { readonly cell: InputCell }) {
  const session = useSession();
  const { active } = usePlan();
  const apart = useLook(
    useCallback((it: Session) => it.reading(cell.name) !== readingOf(it.plan, cell.name, null), [cell.name]),
  );
  if (active === null) return null;
  return (
    <p className="type-small">
      {apart ? `“${active}” has its own value here. ` : 'This holds for every scenario. '}
      <button
        type="button"
        className="base-plain-button"
        onClick={() =>
          session.edit(
            apart ? `${cell.label} follows the base` : `${cell.label} in “${active}” alone`,
            (plan) => (apart ? followBase(plan, cell.name) : setApart(plan, cell.name)),
          )
        }
      >
        {apart ? 'Follow the base values again' : `Give “${active}” its own value`}
      </button>
    </p>
  );
}
