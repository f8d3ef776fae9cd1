import type { Units } from '../../plan/plan.ts';
import type { LengthStyle } from '../../units/format-length.ts';

const STYLES: Readonly<Record<Units, LengthStyle>> = {
  mm: { unit: 'mm' },
  in: { unit: 'in' },
  both: { unit: 'both' },
};

/** How lengths are shown for a plan's units; the same object each time. */
export const lengthStyle = (units: Units): LengthStyle => STYLES[units];

/** The unit of a bare number that is typed, and the one a field shows. */
export const bareUnit = (units: Units): 'mm' | 'in' => (units === 'in' ? 'in' : 'mm');
