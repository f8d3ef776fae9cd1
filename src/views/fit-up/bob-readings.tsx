import { NoAnswer } from '../../calc/answer.ts';
import { BOB_READINGS, stands } from '../../fitting/bob.ts';
import { inputNamed } from '../../plan/book.ts';
import { putFitted } from '../../session/fit-up/enter-fitted.ts';
import { Action } from '../parts/action.tsx';
import { shown } from '../parts/show.ts';
import { useAnswer, usePlan, useSession } from '../use-session.ts';
import { by } from './by.ts';
import { StepReading } from './step-reading.tsx';

/** Plumb by bob offsets top and bottom, or by a level, with the boat's list and trim taken out. */
export function BobReadings() {
  return (
    <section className="fit-up-section" aria-label="How the shaft stands">
      <h3 className="type-section">How the shaft stands</h3>
      <div className="fit-up-fields">
        {BOB_READINGS.map(({ name, label, unit, help }) => (
          <StepReading key={name} step={name} check={{ what: label, unit }} help={help} />
        ))}
      </div>
      <Stands />
    </section>
  );
}

function Stands() {
  const session = useSession();
  const { fit, units } = usePlan();
  const most = useAnswer('lean_max')?.value;
  const found = stands(fit.steps);
  if (found instanceof NoAnswer) return <p className="type-small">{found.why}</p>;
  const { seen, boat, lieRead } = found;
  const deg = (value: number): string => shown(value, 'deg', units);
  const way = (value: number, plus: string, minus: string): string =>
    `${deg(Math.abs(value))} to ${value < 0 ? minus : plus}`;
  const isOutside = typeof most === 'number' && Math.abs(boat.side) > most;
  const aft = Math.round(boat.aft * 100) / 100;
  const side = Math.round(boat.side * 100) / 100;
  const isTaken =
    fit.fitted.get('shaft_lean')?.value === aft && fit.fitted.get('shaft_side_lean')?.value === side;
  const take = (name: string, value: number) =>
    putFitted(session, name, {
      value,
      origin: 'reading',
      offBy: inputNamed(name)?.off_by ?? 0,
      with: 'plumb bob or level',
      ...by(session),
    });
  return (
    <div role="status">
      <p className="type-text" data-lean={boat.aft} data-side={boat.side}>
        In the boat the shaft leans {deg(boat.aft)} aft and {way(boat.side, 'starboard', 'port')}. Against
        gravity: {deg(seen.aft)} aft, {way(seen.side, 'starboard', 'port')}.
        {lieRead ? '' : ' List and trim were not both read: what is missing counts as 0.'}
      </p>
      {typeof most === 'number' && (
        <p className={isOutside ? 'fit-up-not-met type-small' : 'type-small'}>
          {isOutside
            ? `Stop: to the side at most ${deg(most)} is allowed. Move the upper clamp and read again.`
            : `To the side at most ${deg(most)} is allowed: met.`}
        </p>
      )}
      {isTaken ? (
        <p className="type-small">Both leans stand among the readings.</p>
      ) : (
        <Action
          onPress={() => {
            take('shaft_lean', aft);
            take('shaft_side_lean', side);
          }}
        >
          {`Take ${deg(aft)} as the lean fitted, and ${deg(side)} to the side`}
        </Action>
      )}
    </div>
  );
}
