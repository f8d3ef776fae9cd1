/** Lengths are counted in millionths of a millimetre: far below any saw, and any sum of them is a whole number. */
const PER_MM = 1e6;

/** A length that is a whole number of steps but for the last bits of its decimal fraction counts as that number. */
const LAST_BITS = 1e-3;

const whole = (mm: number, otherwise: (steps: number) => number): number => {
  const steps = mm * PER_MM;
  const nearest = Math.round(steps);
  return Math.abs(steps - nearest) < LAST_BITS ? nearest : otherwise(steps);
};

/** A length that has to fit, in whole steps, never short. */
export const stepsToFit = (mm: number): number => whole(mm, Math.ceil);

/** A length to fit into, in whole steps, never long. */
export const stepsToFill = (mm: number): number => whole(mm, Math.floor);

const common = (a: number, b: number): number => (b === 0 ? a : common(b, a % b));

/** The greatest whole number that divides all of them. */
export const commonStep = (lengths: readonly number[]): number => lengths.reduce(common, 0);
