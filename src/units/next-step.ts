import { divide, type Fraction, floor, fraction, multiply, subtract } from './fraction.ts';
import { fractionOfNumber } from './fraction-of-decimal.ts';
import { INCH_PER_MM } from './nearest-inch.ts';
import { numberOfFraction } from './number-of-fraction.ts';

/** A step in the input's base unit, or, for lengths in mm, a fraction of an inch: { inch: [1, 16] }. */
export type Step = number | { readonly inch: readonly [over: number, under: number] };

/** A value this near to a grid line, as a share of the step, stands on it: arithmetic noise is no step of its own. */
const ON_GRID_WITHIN = fraction(1n, 1_000_000_000n);

const sizeOf = (step: Step): Fraction => {
  if (typeof step === 'number') return fractionOfNumber(step);
  const [over, under] = step.inch;
  return divide(divide(fractionOfNumber(over), fractionOfNumber(under)), INCH_PER_MM);
};

const isBelow = (a: Fraction, b: Fraction): boolean => subtract(a, b).over < 0n;

/**
 * The nearest multiple of the step above the value (direction 1) or below it (-1), exactly: 0.2 and a step of 0.1 give
 * 0.3. A value off the grid lands on it. Throws when the value is not finite or the step not above 0.
 */
export const nextStep = (value: number, step: Step, direction: 1 | -1): number => {
  const size = sizeOf(step);
  if (size.over <= 0n)
    throw new RangeError(`A step of ${JSON.stringify(step)} was given: a step is above 0.`);
  const position = divide(fractionOfNumber(value), size);
  const below = floor(position);
  const past = subtract(position, fraction(below, 1n));
  const onLower = !isBelow(ON_GRID_WITHIN, past);
  const onUpper = isBelow(subtract(fraction(1n, 1n), past), ON_GRID_WITHIN);
  const up = onUpper ? below + 2n : below + 1n;
  const down = onLower ? below - 1n : below;
  return numberOfFraction(multiply(fraction(direction === 1 ? up : down, 1n), size));
};
