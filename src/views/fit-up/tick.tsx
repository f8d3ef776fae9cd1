import { type ReactNode, useRef, useState } from 'react';
import { stepDone, tickStep, untickStep } from '../../session/fit-up/steps-done.ts';
import { Action } from '../parts/action.tsx';
import { usePlan, useSession } from '../use-session.ts';
import { by } from './by.ts';
import { useSay } from './say.ts';

interface Props {
  readonly step: string;
  /** What undo calls it. */
  readonly label: string;
  readonly children: ReactNode;
  /** Whether the tick may be set; where it may not, whoever is asked shows what stops it. */
  readonly mayTick?: () => boolean;
}

/** A row to tick with a thumb; who and when are shown once it is ticked. Taking a tick off is asked about first. */
export function Tick({ step, label, children, mayTick }: Props) {
  const session = useSession();
  const say = useSay();
  const row = stepDone(usePlan(), step);
  const box = useRef<HTMLInputElement>(null);
  const [isAsking, setAsking] = useState(false);
  const done = row?.done === true;
  const noted = [row?.who, row?.when].filter(Boolean).join(', ');
  const onChange = (): void => {
    if (done) {
      setAsking(true);
      return;
    }
    if (mayTick?.() === false) return;
    const ticked = tickStep(session, step, label, by(session));
    say(ticked.ok ? `Ticked: ${label}.` : ticked.why);
  };
  const onAnswer = (isOff: boolean): void => {
    setAsking(false);
    box.current?.focus();
    if (isOff) untickStep(session, step, label, by(session));
    say(isOff ? `Tick taken off: ${label}.` : `Still ticked: ${label}.`);
  };
  return (
    <>
      <label className="fit-up-tick" data-step={step} data-done={done ? '' : undefined}>
        <input ref={box} type="checkbox" className="base-check" checked={done} onChange={onChange} />
        <span>
          {children}
          {done && noted !== '' && <span className="fit-up-by type-small">{noted}</span>}
        </span>
      </label>
      {done && isAsking && (
        <fieldset className="fit-up-ask">
          <legend className="type-small">
            Take this tick off? Whose it was and what was read stay in the record.
          </legend>
          <Action plate focused onPress={() => onAnswer(false)} says={`Leave it ticked: ${label}`}>
            Leave it ticked
          </Action>
          <Action onPress={() => onAnswer(true)} says={`Take the tick off: ${label}`}>
            Take the tick off
          </Action>
        </fieldset>
      )}
    </>
  );
}
