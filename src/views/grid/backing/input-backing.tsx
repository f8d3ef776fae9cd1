import { useCallback, useId, useState } from 'react';
import { followBase, setApart, setLocked } from '../../../plan/edit.ts';
import type { Origin } from '../../../plan/plan.ts';
import type { InputCell } from '../../../plan/template.ts';
import type { Session } from '../../../session/session.ts';
import { BackingText } from '../../parts/backing-text.tsx';
import { isPicked } from '../../parts/options.ts';
import { PickField } from '../../parts/pick-field.tsx';
import { shown } from '../../parts/show.ts';
import { useUnits } from '../../parts/use-units.ts';
import { useLook, useReading, useSession } from '../../use-session.ts';
import type { Column } from '../columns.ts';
import { ORIGIN } from '../from-words.ts';
import type { BookRow } from '../rows.ts';
import { Heading } from './heading.tsx';
import { RefusedText } from './refused-text.tsx';

interface Props {
  readonly row: BookRow;
  readonly cell: InputCell;
  readonly column: Column;
}

/** What stands behind a value that is read or chosen. */
export function InputBacking({ row, cell, column }: Props) {
  const reading = useReading(cell.name);
  const headingId = useId();
  const [why, setWhy] = useState<string>();
  return (
    <>
      <Heading
        id={headingId}
        place={`${row.page} · ${row.section}`}
        label={cell.label}
        name={cell.name}
        unit={cell.unit}
      />
      <RefusedText row={row} column={column} unit={cell.unit} />
      {isPicked(cell) && <PickField cell={cell} labelledBy={headingId} onTold={setWhy} />}
      {why !== undefined && (
        <p className="type-small grid-why" role="alert">
          {why}
        </p>
      )}
      <p className="type-small">{cell.help}</p>
      <Known cell={cell} />
      {reading?.formula !== undefined && <BackingText formula={reading.formula} />}
      {cell.kind === 'choice' ? <Lock cell={cell} /> : <StandIn cell={cell} />}
      <Apart cell={cell} />
      <p className="type-small base-soft">In formulas: {cell.name}</p>
    </>
  );
}

/** What is noted about the reading, and what is usual. */
function Known({ cell }: { readonly cell: InputCell }) {
  const units = useUnits();
  const reading = useReading(cell.name);
  const unit = units === 'in' ? 'in' : 'mm';
  const value = (it: number): string => shown(it, cell.unit, unit);
  const noted = [
    reading !== undefined && reading.formula === undefined && cell.kind === 'input'
      ? ['Where from', ORIGIN[reading.origin]]
      : undefined,
    reading?.typed !== undefined && reading.formula === undefined ? ['Typed as', reading.typed] : undefined,
    reading?.offBy === undefined || reading.offBy === 0
      ? undefined
      : [
          reading.normal === true ? 'Off by, one standard deviation' : 'Off by, at most',
          value(reading.offBy),
        ],
    cell.usual === undefined ? undefined : ['Usually', `${value(cell.usual[0])} to ${value(cell.usual[1])}`],
    reading?.who === undefined || reading.who === '' ? undefined : ['Read by', reading.who],
    reading?.when === undefined || reading.when === '' ? undefined : ['When', reading.when],
    reading?.with === undefined || reading.with === '' ? undefined : ['With', reading.with],
    cell.source === undefined ? undefined : ['Source', cell.source],
    reading?.note === undefined || reading.note === '' ? undefined : ['Note', reading.note],
  ].filter((it) => it !== undefined);
  return (
    <dl className="grid-known type-small">
      {noted.map(([term, words]) => (
        <div key={term}>
          <dt>{term}</dt>
          <dd>{words}</dd>
        </div>
      ))}
    </dl>
  );
}

interface SwitchProps {
  readonly checked: boolean;
  readonly words: string;
  readonly onSwitch: () => void;
}

const Switch = ({ checked, words, onSwitch }: SwitchProps) => (
  <label className="grid-switch type-small">
    <input type="checkbox" className="base-check" checked={checked} onChange={onSwitch} />
    {words}
  </label>
);

function Lock({ cell }: { readonly cell: InputCell }) {
  const session = useSession();
  const locked = useLook(useCallback((it: Session) => it.plan.locked.has(cell.name), [cell.name]));
  const toggle = (): void => {
    session.edit(locked ? `Lock off: ${cell.label}` : `Lock on: ${cell.label}`, (plan) =>
      setLocked(plan, cell.name, !locked),
    );
  };
  return <Switch checked={locked} words="Already drilled: nothing may change it" onSwitch={toggle} />;
}

const NOT_OWN: ReadonlySet<Origin> = new Set(['stand-in', 'assumed']);

function StandIn({ cell }: { readonly cell: InputCell }) {
  const session = useSession();
  const origin = useReading(cell.name)?.origin ?? 'stand-in';
  const isStandIn = NOT_OWN.has(origin);
  const toggle = (): void => {
    const own = cell.where === 'manual' ? 'manual' : 'reading';
    session.annotate(cell.name, {
      origin: isStandIn ? own : cell.where === 'assumed' ? 'assumed' : 'stand-in',
    });
  };
  const words = origin === 'assumed' ? 'Assumed: not read by you yet' : 'Stand-in: not your own value yet';
  return <Switch checked={isStandIn} words={words} onSwitch={toggle} />;
}

/** Which scenario an edit here goes to, and the way to change that. */
function Apart({ cell }: { readonly cell: InputCell }) {
  const session = useSession();
  const units = useUnits();
  const active = useLook(useCallback((it: Session) => it.plan.active, []));
  const base = useLook(useCallback((it: Session) => it.plan.inputs.get(cell.name), [cell.name]));
  const reading = useReading(cell.name);
  if (active === null) return null;
  const isApart = reading !== base;
  if (!isApart && cell.kind === 'choice') {
    return <p className="type-small">A change here goes to “{active}” alone.</p>;
  }
  const toggle = (): void => {
    session.edit(isApart ? `${cell.label} follows the base` : `${cell.label} in “${active}” alone`, (plan) =>
      isApart ? followBase(plan, cell.name) : setApart(plan, cell.name),
    );
  };
  return (
    <p className="type-small">
      {isApart
        ? `“${active}” has its own value; the base has ${shown(base?.value ?? null, cell.unit, units === 'in' ? 'in' : 'mm')}. `
        : 'This holds for every scenario. '}
      <button type="button" className="base-plain-button" onClick={toggle}>
        {isApart ? 'Follow the base again' : `Give “${active}” its own value`}
      </button>
    </p>
  );
}
