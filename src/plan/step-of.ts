import type { Step } from '../units/next-step.ts';
import type { Units } from './plan.ts';
import type { InputCell } from './template.ts';

const SIXTY_FOURTHS = 64;

/** The step of an input in the units shown. */
export function stepOf(cell: InputCell, units: Units): Step {
  if (units === 'in' && cell.step_in !== undefined) {
    return { inch: [Math.round(cell.step_in * SIXTY_FOURTHS), SIXTY_FOURTHS] };
  }
  return cell.step ?? 1;
}
