import { nextStep, type Step } from '../units/next-step.ts';

/** A number that may be chosen anew, or a part that may be fitted: 1 where it is, 0 where not. */
export interface Choice {
  readonly name: string;
  /** Inputs that are set to the same value with it. */
  readonly also?: readonly string[];
  readonly isFlag?: true;
  readonly present: number;
  /** Its usual range. */
  readonly low: number;
  readonly high: number;
  readonly step: Step;
  /** It counts things: one more or one less is less work than to place a part anew. */
  readonly counts: boolean;
  /** The only values it can have. */
  readonly only?: readonly number[] | undefined;
}

/** Most values on each side of the present one. */
const MOST = 400;

/** The values on a choice's step grid to one side of the present one, nearest first, inside its usual range. */
export function candidates({ present, low, high, step, only }: Choice, direction: 1 | -1): number[] {
  const isInside = (value: number): boolean => value >= low && value <= high;
  const isBeyond = (value: number): boolean => (direction === 1 ? value > high : value < low);
  if (only !== undefined) {
    return only.filter((it) => (it - present) * direction > 0).sort((a, b) => (a - b) * direction);
  }
  const values: number[] = [];
  // A choice that stands outside its range comes back to the range's near end first.
  const start =
    direction === 1 ? Math.max(present, nextStep(low, step, -1)) : Math.min(present, nextStep(high, step, 1));
  for (
    let value = nextStep(start, step, direction);
    values.length < MOST;
    value = nextStep(value, step, direction)
  ) {
    if (isBeyond(value)) break;
    if (isInside(value)) values.push(value);
  }
  return values;
}
