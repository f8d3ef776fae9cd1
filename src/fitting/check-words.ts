import type { Units } from '../plan/plan.ts';
import { formatValue } from '../units/format-value.ts';
import type { Check } from './step.ts';

export interface CheckVerdict {
  readonly met: boolean;
  readonly words: string;
}

/** Whether a reading keeps to its bounds, with what is allowed; undefined where nothing bounds it. */
export function checkVerdict(check: Check, value: number, units: Units): CheckVerdict | undefined {
  const { low, high, unit } = check;
  if (low === undefined && high === undefined) return undefined;
  const says = (it: number): string => formatValue(it, unit, { unit: units });
  const allowed =
    low !== undefined && high !== undefined
      ? `between ${says(low)} and ${says(high)}`
      : low !== undefined
        ? `at least ${says(low)}`
        : `at most ${says(high ?? 0)}`;
  const met = (low === undefined || value >= low) && (high === undefined || value <= high);
  return { met, words: met ? `Met: ${allowed}.` : `Not met: it must be ${allowed}.` };
}
