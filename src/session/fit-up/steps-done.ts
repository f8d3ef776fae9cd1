import type { Stop } from '../../fitting/stops.ts';
import { goOn, setStep, untick } from '../../plan/edit.ts';
import type { Plan, StepDone } from '../../plan/plan.ts';
import { parseEntry } from '../../units/parse-entry.ts';
import type { Done, Session } from '../session.ts';
import { noted, type ReadBy } from './enter-fitted.ts';

export const stepDone = (plan: Plan, step: string): StepDone | undefined =>
  plan.fit.steps.find((it) => it.step === step);

const withBy = (step: StepDone, by: ReadBy): StepDone => {
  const { who: _, when: __, ...rest } = step;
  return { ...rest, ...noted(by) };
};

/** Ticks a step; who and when are kept with it. */
export const tickStep = (session: Session, step: string, label: string, by: ReadBy): Done =>
  session.edit(`Tick: ${label}`, (plan) =>
    setStep(plan, withBy({ ...(stepDone(plan, step) ?? { step }), done: true }, by)),
  );

/** Takes a tick off: whose it was, and what was read at the step, is kept. */
export const untickStep = (session: Session, step: string, label: string, by: ReadBy): Done =>
  session.edit(`Tick off: ${label}`, (plan) => untick(plan, step, noted(by)));

/** Goes on with a step in spite of what stops it. The record is to say who did, so a name is asked for. */
export function goOnAllTheSame(
  session: Session,
  step: string,
  label: string,
  stops: readonly Stop[],
  because: string,
  by: ReadBy,
): Done {
  if (by.who.trim() === '')
    return { ok: false, why: 'Enter who is at work: the name is kept with the reason.' };
  return session.edit(`Go on all the same: ${label}`, (plan) =>
    goOn(plan, {
      step,
      because: because.trim(),
      despite: stops.map(({ stop, by: far, says }) => ({
        stop,
        ...(far === undefined ? {} : { by: far }),
        says,
      })),
      ...noted(by),
    }),
  );
}

export interface Asked {
  readonly step: string;
  readonly label: string;
  /** Hours count as plain numbers. */
  readonly unit: 'mm' | 'deg' | '–';
}

/** Keeps what was read at a step; an empty text takes it out. */
export function readAtStep(session: Session, { step, label, unit }: Asked, typed: string, by: ReadBy): Done {
  const kind = unit === 'mm' ? ('length' as const) : ('number' as const);
  const bare = session.plan.units === 'in' ? 'in' : 'mm';
  const entry = parseEntry(typed, { name: label, kind, unit, bare });
  if (!entry.ok) return entry;
  const value = entry.empty ? undefined : entry.value;
  if (value !== undefined && typeof value !== 'number') return { ok: false, why: `${label} is a number.` };
  if (unit === '–' && value !== undefined && !(value > 0 && value <= MOST_HOURS)) {
    return {
      ok: false,
      why: `${label}: enter more than 0 and at most ${MOST_HOURS}; ${typed.trim()} is not.`,
    };
  }
  return session.edit(`Reading: ${label}`, (plan) => {
    const { value: _, ...before } = stepDone(plan, step) ?? { step, done: false };
    const read = value === undefined ? before : { ...before, value };
    // A tick keeps its own time: what hardens is counted from it.
    return setStep(plan, before.done ? read : withBy(read, by));
  });
}

/** Hours that anything may take to harden: four weeks. */
const MOST_HOURS = 672;
