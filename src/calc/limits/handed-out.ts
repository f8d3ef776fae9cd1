/** How many places after its first digit a number is handed out with, to a limit as to a reader. */
export const PLACES = 14;

/** Whole numbers below this have no more digits than are kept. */
export const WHOLE = 10 ** PLACES;

const scaleOf = (size: number): number => 10 ** (PLACES - Math.floor(Math.log10(size)));

/**
 * A number as a cell hands it out, without the last digit, in which the order of sums shows. The very least and greatest
 * numbers, which rounding would make no number of, stay as they are.
 */
export function handedOut(value: number): number {
  if (Math.abs(value) < WHOLE && Number.isInteger(value)) return value;
  const scale = scaleOf(Math.abs(value));
  const rounded = value < 0 ? -Math.round(-value * scale) / scale : Math.round(value * scale) / scale;
  return Number.isFinite(rounded) ? rounded : value;
}
