import { setStep } from '../../plan/edit.ts';
import type { Plan, StepDone } from '../../plan/plan.ts';
import { parseEntry } from '../../units/parse-entry.ts';
import type { Done, Session } from '../session.ts';
import type { ReadBy } from './enter-fitted.ts';

export const stepDone = (plan: Plan, step: string): StepDone | undefined =>
  plan.fit.steps.find((it) => it.step === step);

const withBy = (step: StepDone, { who, when }: ReadBy): StepDone => {
  const { who: _, when: __, ...rest } = step;
  return { ...rest, ...(who === '' ? {} : { who }), ...(when === '' ? {} : { when }) };
};

/** Ticks a step, or takes the tick off; who and when are kept with it. */
export const tickStep = (session: Session, step: string, label: string, by: ReadBy): Done =>
  session.edit(label, (plan) => {
    const before = stepDone(plan, step) ?? { step, done: false };
    const done = !before.done;
    return setStep(plan, withBy({ ...before, done }, done ? by : { who: '', when: '' }));
  });

export interface Asked {
  readonly step: string;
  readonly label: string;
  readonly unit: 'mm' | 'deg';
}

/** Keeps what was read at a step; an empty text takes it out. */
export function readAtStep(session: Session, { step, label, unit }: Asked, typed: string, by: ReadBy): Done {
  const kind = unit === 'mm' ? ('length' as const) : ('number' as const);
  const bare = session.plan.units === 'in' ? 'in' : 'mm';
  const entry = parseEntry(typed, { name: label, kind, unit, bare });
  if (!entry.ok) return entry;
  const value = entry.empty ? undefined : entry.value;
  if (value !== undefined && typeof value !== 'number') return { ok: false, why: `${label} is a number.` };
  return session.edit(`Reading: ${label}`, (plan) => {
    const { value: _, ...before } = stepDone(plan, step) ?? { step, done: false };
    const read = value === undefined ? before : { ...before, value };
    return setStep(plan, withBy(read, by));
  });
}
