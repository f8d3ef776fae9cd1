import { type FormEvent, type ReactNode, useEffect, useId, useRef, useState } from 'react';
import type { Gate, WorkStep } from '../../fitting/step.ts';
import type { Stop } from '../../fitting/stops.ts';
import { goOnAllTheSame } from '../../session/fit-up/steps-done.ts';
import { Action } from '../parts/action.tsx';
import { cellHref } from '../parts/cell-href.ts';
import { usePlan, useSession } from '../use-session.ts';
import { by } from './by.ts';
import { useSay } from './say.ts';
import { Tick } from './tick.tsx';
import { WhoField } from './who-field.tsx';

const BEFORE: Readonly<Record<Gate, string>> = {
  drill: 'Stop before you drill',
  cut: 'Stop before you cut',
  bed: 'Stop before you lay sealant',
  tighten: 'Stop before you tighten',
};

/** Steps not ticked that are named one by one, the first ones. */
const MOST = 5;

interface Props {
  readonly step: WorkStep;
  readonly gate: Gate;
  readonly stops: readonly Stop[];
  /** It is this step’s turn: the work may go on from here. */
  readonly isDue: boolean;
  readonly onOpen: (step: string) => void;
  /** The work goes on all the same. */
  readonly onGone: () => void;
}

/** What stops a step, at its head, with what to do about each; and the way on all the same, with a reason. */
export function StopPlate({ step, gate, stops, isDue, onOpen, onGone }: Props) {
  const of = (kind: Stop['kind']): readonly Stop[] => stops.filter((it) => it.kind === kind);
  const [standIns, skipped] = [of('stand-in'), of('skipped')];
  return (
    <section className="fit-up-plate" aria-label={`${BEFORE[gate]}: ${step.title}`} data-stops={stops.length}>
      <h3 tabIndex={-1} className="fit-up-plate-head type-section base-on-ink">
        {BEFORE[gate]}
      </h3>
      <ul className="fit-up-plate-list type-small">
        {stops
          .filter((it) => it.kind !== 'stand-in' && it.kind !== 'skipped')
          .map((stop) => (
            <li key={stop.stop} data-stop={stop.stop}>
              <OneStop stop={stop} onOpen={onOpen} />
            </li>
          ))}
        {standIns.length > 0 && (
          <li data-stop="stand_ins">
            <p className="fit-up-says">
              {standIns.length === 1
                ? 'A made-up value is under this work.'
                : `${standIns.length} made-up values are under this work.`}{' '}
              Measure and enter {standIns.length === 1 ? 'it' : 'them'} first.
            </p>
            <ul className="fit-up-doors">
              {standIns.map((it) => (
                <li key={it.stop} data-stop={it.stop}>
                  <Door href={cellHref(it.cell ?? it.about)}>{it.says}</Door>
                </li>
              ))}
            </ul>
          </li>
        )}
        {skipped.length > 0 && (
          <li data-stop="skipped">
            <p className="fit-up-says">Not ticked yet:</p>
            <ul className="fit-up-doors">
              {skipped.slice(0, MOST).map((it) => (
                <li key={it.stop} data-stop={it.stop}>
                  <Action onPress={() => onOpen(it.about)}>{it.says}</Action>
                </li>
              ))}
            </ul>
            {skipped.length > MOST && <p>and {skipped.length - MOST} more after those.</p>}
          </li>
        )}
      </ul>
      {isDue && <GoOn step={step} stops={stops} onGone={onGone} />}
    </section>
  );
}

const Door = ({ href, children }: { readonly href: string; readonly children: ReactNode }) => (
  <a className="fit-up-door" href={href}>
    {children}
  </a>
);

function OneStop({ stop, onOpen }: { readonly stop: Stop; readonly onOpen: (step: string) => void }) {
  const { kind, about, cell, says, otherwise } = stop;
  if (kind === 'stop point') {
    return (
      <>
        <Tick step={stop.stop} label={stop.title ?? says}>
          <span className="fit-up-says">{says}</span>
        </Tick>
        {otherwise !== undefined && <p>If not: {otherwise}</p>}
      </>
    );
  }
  return (
    <>
      <p className="fit-up-says">{says}</p>
      {otherwise !== undefined && <p>{otherwise}</p>}
      {cell !== undefined ? (
        <Door href={cellHref(cell)}>Show where it comes from</Door>
      ) : about === 'lean' ? (
        <Door href="#/fit-up/fitted">Show the readings under As fitted</Door>
      ) : (
        <Action onPress={() => onOpen(about)}>Open that step</Action>
      )}
    </>
  );
}

/** The way on in spite of what stops the step, behind one more press: the plate is there to stop. */
function GoOn(props: Pick<Props, 'step' | 'stops' | 'onGone'>) {
  const [isOpen, setOpen] = useState(false);
  if (isOpen) return <Reason {...props} />;
  return (
    <div className="fit-up-go-on">
      <Action onPress={() => setOpen(true)}>Go on all the same …</Action>
    </div>
  );
}

/** Why the work goes on, kept with name and time. */
function Reason({ step, stops, onGone }: Pick<Props, 'step' | 'stops' | 'onGone'>) {
  const session = useSession();
  const say = useSay();
  const id = useId();
  const [because, setBecause] = useState('');
  const [why, setWhy] = useState<string>();
  const isNamed = (usePlan().fit.handover.get('fitted_by') ?? '') !== '';
  // Asked for once, the field stays until the work goes on, so that it does not vanish under a finger.
  const [asksName] = useState(!isNamed);
  const box = useRef<HTMLTextAreaElement>(null);
  useEffect(() => box.current?.focus(), []);
  const onSubmit = (event: FormEvent): void => {
    event.preventDefault();
    const done = goOnAllTheSame(session, step.name, step.title, stops, because, by(session));
    setWhy(done.ok ? undefined : done.why);
    if (!done.ok) return;
    say('Gone on all the same. The reason is in the record.');
    onGone();
  };
  return (
    <form className="fit-up-go-on" onSubmit={onSubmit}>
      {asksName && <WhoField />}
      <label className="type-label" htmlFor={id}>
        Go on all the same, because …
      </label>
      <textarea
        ref={box}
        id={id}
        className="text-entry-box"
        rows={2}
        value={because}
        aria-invalid={why === undefined ? undefined : true}
        aria-describedby={`${id}why`}
        onChange={(event) => setBecause(event.target.value)}
      />
      <p id={`${id}why`} className="type-small" role={why === undefined ? undefined : 'alert'}>
        {why ?? 'Your reason, your name and the time are kept in the handover record.'}
      </p>
      <Action submits>Go on with this reason</Action>
    </form>
  );
}
