import type { Units } from '../plan/plan.ts';
import { formatValue } from '../units/format-value.ts';
import type { Check } from './step.ts';

export interface CheckVerdict {
  readonly met: boolean;
  readonly words: string;
}

/** How far a reading is beyond its bounds, base units; 0 within them. */
export const beyond = ({ low, high }: Check, value: number): number =>
  Math.max(0, low === undefined ? 0 : low - value, high === undefined ? 0 : value - high);

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
  const met = beyond(check, value) === 0;
  return { met, words: met ? `Met: ${allowed}.` : `Not met: it must be ${allowed}.` };
}
