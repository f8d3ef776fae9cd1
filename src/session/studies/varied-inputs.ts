import { inputs } from '../../plan/book.ts';
import { type Plan, type Reading, readingOf } from '../../plan/plan.ts';
import type { Varied } from '../../studies/drivers/varied.ts';
import { surveyErrors } from './survey-errors.ts';

/** What a reading was taken with: readings with the same thing may share their error. */
function toolOf({ with: tool }: Reading): string | undefined {
  const tidy = tool?.trim();
  return tidy === '' ? undefined : tidy;
}

/**
 * Every number of a plan in a scenario that a study may move, with how far it may be off: its inputs, and the figures
 * of its survey's tables. Inputs that follow other cells are moved by those; inputs without a number are left out.
 */
export function variedInputs(plan: Plan, scenario: string | null): Varied[] {
  const single = inputs.flatMap((cell): Varied[] => {
    if (cell.type !== 'number' && cell.type !== 'whole') return [];
    const reading = readingOf(plan, cell.name, scenario);
    if (reading === undefined || reading.formula !== undefined) return [];
    if (typeof reading.value !== 'number') return [];
    const tool = toolOf(reading);
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
  return [...single, ...surveyErrors(plan, scenario)];
}
