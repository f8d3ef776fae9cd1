import { newPlan } from '../../plan/new-plan.ts';
import type { Plan } from '../../plan/plan.ts';
import type { OwnBoatState } from './own-boat.ts';
import { readStep } from './read-step.ts';
import { stepsOf } from './steps.ts';

export type Planned =
  | { readonly ok: true; readonly plan: Plan }
  /** The step that cannot stand, and why. */
  | { readonly ok: false; readonly at: number; readonly why: string };

/** The plan that all steps together make; `today` is an ISO 8601 date. */
export function planOf(state: OwnBoatState, title: string, today: string): Planned {
  const plan = newPlan(title);
  const inputs = new Map(plan.inputs);
  const steps = stepsOf(state.answers);
  for (const [at, step] of steps.entries()) {
    if (step.kind === 'question' && state.answers[step.question.id] === undefined) {
      return { ok: false, at, why: `Choose one answer: ${step.question.asks}` };
    }
    if (step.kind !== 'reading') continue;
    const entered = readStep(state, step.cell);
    if (!entered.ok) return { ok: false, at, why: entered.why };
    const isLeft = state.left.has(step.cell.name);
    inputs.set(step.cell.name, isLeft ? entered.reading : { ...entered.reading, when: today });
  }
  return { ok: true, plan: { ...plan, units: state.answers.units ?? 'both', inputs } };
}
