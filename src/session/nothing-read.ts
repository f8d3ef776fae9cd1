import { inputs } from '../plan/book.ts';
import type { Plan } from '../plan/plan.ts';
import type { InputCell } from '../plan/template.ts';
import { firstInputs } from './own-boat/steps.ts';

/** Whether a plan is still as the template leaves it: every value a stand-in, nothing read and nothing chosen. */
export const nothingRead = (plan: Plan): boolean =>
  plan.scenarios.length === 0 &&
  plan.ownCells.length === 0 &&
  inputs.every((cell) => {
    const reading = plan.inputs.get(cell.name);
    return (
      reading?.value === cell.value &&
      reading.formula === undefined &&
      reading.origin !== 'reading' &&
      reading.origin !== 'manual'
    );
  });

/** The first readings that are taken with a tape or a level, in the order of the numbers on the drawing of a new plan. */
export const measuredFirst: readonly InputCell[] = firstInputs.filter(
  ({ unit }) => unit === 'mm' || unit === 'deg',
);
