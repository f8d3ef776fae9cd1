import { inputNamed } from '../book.ts';
import { refusal } from '../bounds.ts';
import type { FitUp, Plan, Reading, StepDone, Unticked, WentOn } from '../plan.ts';
import { lineRefusal, linesRefusal } from '../text-refusal.ts';
import { type Edited, edited, refuse } from './edited.ts';

/** What a step and an entry may be called in a file. */
const KEY = /^[a-z][a-z0-9_]*$/;

const keyRefusal = (what: string, name: string): string | undefined =>
  KEY.test(name)
    ? undefined
    : `${what} goes by small letters, digits and _; “${name.slice(0, 40)}” does not.`;

const withFit = (plan: Plan, change: Partial<FitUp>): Edited =>
  edited({ ...plan, fit: { ...plan.fit, ...change } });

/** Puts a reading of what was really fitted in the place of a planned value; with none, the plan's counts again. */
export function setFitted(plan: Plan, name: string, reading: Reading | undefined): Edited {
  const cell = inputNamed(name);
  if (cell === undefined) return refuse(`There is no input named ${name}.`);
  const fitted = new Map(plan.fit.fitted);
  if (reading === undefined) {
    return fitted.delete(name) ? withFit(plan, { fitted }) : edited(plan);
  }
  if (reading.formula !== undefined) {
    return refuse(`${cell.label}, as fitted, is what was read, not a formula.`);
  }
  const { offBy } = reading;
  if (offBy !== undefined && !(offBy >= 0 && offBy < Number.POSITIVE_INFINITY)) {
    return refuse(`${cell.label} cannot be off by ${offBy}: it must be a number of at least 0.`);
  }
  const why =
    refusal(cell, reading.value) ??
    linesRefusal(`The text typed for ${cell.label}`, reading.typed) ??
    lineRefusal(`The unit of ${cell.label}`, reading.unit) ??
    lineRefusal(`Who read ${cell.label}`, reading.who) ??
    lineRefusal(`When ${cell.label} was read`, reading.when) ??
    lineRefusal(`What ${cell.label} was read with`, reading.with) ??
    linesRefusal(`The note on ${cell.label}`, reading.note);
  return why === undefined ? withFit(plan, { fitted: fitted.set(name, reading) }) : refuse(why);
}

/** Keeps how far a step has come, in the place of what was kept of it; an undone step without a reading goes. */
export function setStep(plan: Plan, step: StepDone): Edited {
  const { value, who, when, note } = step;
  if (value !== undefined && !Number.isFinite(value)) {
    return refuse('What was read at a step is a number.');
  }
  const why =
    keyRefusal('A step', step.step) ??
    lineRefusal('Who did a step', who) ??
    lineRefusal('When a step was done', when) ??
    linesRefusal('The note on a step', note);
  if (why !== undefined) return refuse(why);
  const isEmpty = !step.done && value === undefined && (note ?? '') === '';
  const known = plan.fit.steps.some((it) => it.step === step.step);
  if (isEmpty && !known) return edited(plan);
  const steps = isEmpty
    ? plan.fit.steps.filter((it) => it.step !== step.step)
    : known
      ? plan.fit.steps.map((it) => (it.step === step.step ? step : it))
      : [...plan.fit.steps, step];
  return withFit(plan, { steps });
}

/** Keeps why a step is gone on with although something stops it; what was kept before stays. */
export function goOn(plan: Plan, went: WentOn): Edited {
  const why =
    keyRefusal('A step', went.step) ??
    (went.because.trim() === '' ? 'Type the reason why you go on all the same.' : undefined) ??
    linesRefusal('The reason', went.because) ??
    lineRefusal('Who goes on', went.who) ??
    lineRefusal('When a step was gone on with', went.when);
  return why === undefined ? withFit(plan, { wentOn: [...plan.fit.wentOn, went] }) : refuse(why);
}

/** Takes the tick off a step. Whose it was is kept, and so is what was read at the step. */
export function untick(
  plan: Plan,
  step: string,
  by: { readonly who?: string; readonly when?: string },
): Edited {
  const ticked = plan.fit.steps.find((it) => it.step === step);
  if (ticked?.done !== true) return edited(plan);
  const { who: tickedBy, when: tickedWhen, ...rest } = ticked;
  const undone = setStep(plan, { ...rest, done: false });
  if (!undone.ok) return undone;
  const why =
    lineRefusal('Who took the tick off', by.who) ?? lineRefusal('When the tick was taken off', by.when);
  if (why !== undefined) return refuse(why);
  const row: Unticked = {
    step,
    ...(tickedBy === undefined ? {} : { tickedBy }),
    ...(tickedWhen === undefined ? {} : { tickedWhen }),
    ...by,
  };
  return withFit(undone.plan, { unticked: [...undone.plan.fit.unticked, row] });
}

/** Writes one entry of the handover record; an empty text takes it out. */
export function setHandover(plan: Plan, name: string, text: string): Edited {
  const why =
    keyRefusal('An entry of the handover record', name) ??
    linesRefusal('An entry of the handover record', text);
  if (why !== undefined) return refuse(why);
  if ((plan.fit.handover.get(name) ?? '') === text) return edited(plan);
  const handover = new Map(plan.fit.handover);
  if (text === '') handover.delete(name);
  else handover.set(name, text);
  return withFit(plan, { handover });
}
