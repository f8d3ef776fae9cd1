import type { Plan } from '../plan/plan.ts';

/** One edit: what it did, in words, and the plan before and after. Plans share what an edit left alone. */
export interface Step {
  readonly label: string;
  readonly before: Plan;
  readonly after: Plan;
  /** Steps of one gesture, such as a drag of a slider, count as one. */
  readonly gesture?: string | undefined;
  /** Another plan took this one's place. */
  readonly opens?: true | undefined;
}

/** Deepest undo. */
const DEEPEST = 500;

/** What was done and can be undone; what was undone and can be done again. Never changed in place. */
export interface Journal {
  readonly done: readonly Step[];
  readonly undone: readonly Step[];
}

export const emptyJournal: Journal = { done: [], undone: [] };

export function withStep({ done }: Journal, step: Step): Journal {
  const last = done.at(-1);
  if (last !== undefined && step.gesture !== undefined && last.gesture === step.gesture) {
    return { done: [...done.slice(0, -1), { ...step, label: last.label, before: last.before }], undone: [] };
  }
  return { done: [...done.slice(-DEEPEST + 1), step], undone: [] };
}

/** A step that opened another plan, with that plan as it is left now: what it is set to may have changed without a step. */
function left(step: Step, side: 'before' | 'after', plan: Plan): Step {
  if (step.opens !== true) return step;
  return {
    label: step.label,
    opens: true,
    get before() {
      return side === 'before' ? plan : step.before;
    },
    get after() {
      return side === 'after' ? plan : step.after;
    },
  };
}

/** The last step, to be undone from the plan as it stands. */
export function undoStep(
  { done, undone }: Journal,
  now: Plan,
): { readonly step: Step; readonly journal: Journal } | undefined {
  const step = done.at(-1);
  return (
    step && { step, journal: { done: done.slice(0, -1), undone: [...undone, left(step, 'after', now)] } }
  );
}

/** The step undone last, to be done again. */
export function redoStep(
  { done, undone }: Journal,
  now: Plan,
): { readonly step: Step; readonly journal: Journal } | undefined {
  const step = undone.at(-1);
  return (
    step && { step, journal: { done: [...done, left(step, 'before', now)], undone: undone.slice(0, -1) } }
  );
}
