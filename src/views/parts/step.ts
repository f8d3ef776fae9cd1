import type { Units } from '../../plan/plan.ts';
import { stepOf } from '../../plan/step-of.ts';
import type { InputCell } from '../../plan/template.ts';
import { nextStep, type Step } from '../../units/next-step.ts';

const MM_PER_INCH = 25.4;

const within = (cell: InputCell, value: number): number =>
  Math.min(cell.max ?? value, Math.max(cell.min ?? value, value));

/** The value one step up or down, inside the input's bounds; the same value at an end. */
export function stepped(cell: InputCell, value: number, direction: 1 | -1, units: Units): number {
  if (cell.only !== undefined) {
    const listed = [...cell.only].sort((a, b) => (a - b) * direction);
    return listed.find((it) => (it - value) * direction > 0) ?? value;
  }
  const next = within(cell, nextStep(value, stepOf(cell, units), direction));
  return cell.above !== undefined && next <= cell.above ? value : next;
}

const sizeOf = (step: Step): number =>
  typeof step === 'number' ? step : (step.inch[0] / step.inch[1]) * MM_PER_INCH;

/** The multiple of the step nearest to where a slider stands, inside the input's bounds. */
export function settled(cell: InputCell, value: number, units: Units): number {
  const step = stepOf(cell, units);
  const next = within(cell, nextStep(value + sizeOf(step) / 2, step, -1));
  return cell.above !== undefined && next <= cell.above ? stepped(cell, next, 1, units) : next;
}
