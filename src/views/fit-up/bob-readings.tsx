import { useRef } from 'react';
import { NoAnswer } from '../../calc/answer.ts';
import { BOB_READINGS, leanWords, stands } from '../../fitting/bob.ts';
import { inputNamed } from '../../plan/book.ts';
import { noted, putFitted, questionAbout } from '../../session/fit-up/enter-fitted.ts';
import { Action } from '../parts/action.tsx';
import { shown } from '../parts/show.ts';
import { useAnswer, usePlan, useSession } from '../use-session.ts';
import { by } from './by.ts';
import { useSay } from './say.ts';
import { StepReading } from './step-reading.tsx';

/** Plumb by bob offsets top and bottom, or by a level, with the boat's list and trim taken out. */
export function BobReadings() {
  return (
    <section className="fit-up-section" aria-label="How the shaft leans">
      <h3 className="type-section">How the shaft leans</h3>
      <div className="fit-up-fields">
        {BOB_READINGS.map(({ name, label, unit, help }) => (
          <StepReading key={name} step={name} check={{ what: label, unit }} help={help} />
        ))}
      </div>
      <Lean />
    </section>
  );
}

function Lean() {
  const session = useSession();
  const { fit, units } = usePlan();
  const most = useAnswer('lean_max')?.value;
  const say = useSay();
  const told = useRef<HTMLParagraphElement>(null);
  const found = stands(fit.steps);
  if (found instanceof NoAnswer) return <p className="type-small">{found.why}</p>;
  const { seen, boat, lieRead } = found;
  const deg = (value: number): string => shown(value, 'deg', units);
  const isOutside = typeof most === 'number' && Math.abs(boat.side) > most;
  const aft = Math.round(boat.aft * 100) / 100;
  const side = Math.round(boat.side * 100) / 100;
  const isTaken =
    fit.fitted.get('shaft_lean')?.value === aft && fit.fitted.get('shaft_side_lean')?.value === side;
  const leans = [
    ['shaft_lean', aft],
    ['shaft_side_lean', side],
  ] as const;
  const questions = leans.flatMap(([name, value]) => questionAbout(session, name, value) ?? []);
  const take = (): void => {
    const refused = leans
      .map(([name, value]) =>
        putFitted(
          session,
          name,
          {
            value,
            origin: 'reading',
            offBy: inputNamed(name)?.off_by ?? 0,
            with: 'plumb bob or level',
            ...noted(by(session)),
          },
          true,
        ),
      )
      .find((it) => !it.ok);
    say(refused === undefined || refused.ok ? 'Both leans are taken as fitted.' : refused.why);
    told.current?.focus();
  };
  return (
    <div role="status">
      <p className="type-text" data-lean={boat.aft} data-side={boat.side}>
        In the boat the shaft leans {leanWords(boat, units)}. Against gravity: {leanWords(seen, units)}.
        {lieRead ? '' : ' List and trim were not both read: what is missing counts as 0.'}
      </p>
      {typeof most === 'number' && (
        <p className={isOutside ? 'fit-up-not-met type-small' : 'type-small'}>
          {isOutside
            ? `Stop: to the side at most ${deg(most)} is accepted. Move the upper clamp and read again.`
            : `To the side at most ${deg(most)} is accepted: met.`}
        </p>
      )}
      {!isTaken &&
        questions.map((it) => (
          <p key={it} className="type-small">
            {it}
          </p>
        ))}
      <p ref={told} tabIndex={-1} className="type-small">
        {isTaken && 'Both leans are among the readings.'}
      </p>
      {!isTaken && (
        <Action onPress={take}>
          {`${questions.length > 0 ? 'Yes, take' : 'Take'} ${leanWords({ aft, side }, units)} as the leans fitted`}
        </Action>
      )}
    </div>
  );
}
