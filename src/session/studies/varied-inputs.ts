import { inputs } from '../../plan/book.ts';
import { type Plan, type Reading, readingOf } from '../../plan/plan.ts';
import type { InputCell } from '../../plan/template.ts';
import type { Varied } from '../../studies/drivers/varied.ts';

/** What is measured in a length, an angle and so on with one thing shares its error; the unit is part of the thing. */
const toolOf = ({ with: tool }: Reading, { unit }: InputCell): string | undefined =>
  tool === undefined || tool.trim() === '' ? undefined : `${tool.trim()}${unit === 'mm' ? '' : `, ${unit}`}`;

/**
 * Every number of a plan in a scenario that a study may move, with how far it may be off. Inputs that follow other
 * cells and inputs without a number are left out.
 */
export function variedInputs(plan: Plan, scenario: string | null): Varied[] {
  return inputs.flatMap((cell): Varied[] => {
    if (cell.type !== 'number' && cell.type !== 'whole') return [];
    const reading = readingOf(plan, cell.name, scenario);
    if (reading === undefined || reading.formula !== undefined) return [];
    if (typeof reading.value !== 'number') return [];
    const tool = toolOf(reading, cell);
    return [
      {
        name: cell.name,
        value: reading.value,
        offBy: reading.offBy ?? cell.off_by,
        law: reading.normal === true ? 'normal' : 'rectangular',
        whole: cell.type === 'whole',
        ...(tool === undefined ? {} : { with: tool }),
        ...(cell.min === undefined && cell.above === undefined ? {} : { least: cell.min ?? cell.above }),
        ...(cell.max === undefined ? {} : { most: cell.max }),
        ...(cell.step === undefined ? {} : { step: cell.step }),
      },
    ];
  });
}
