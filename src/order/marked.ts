import { inchRoundingError } from '../units/format-length.ts';
import { multiply, roundHalfAway } from '../units/fraction.ts';
import { fractionOfNumber } from '../units/fraction-of-decimal.ts';
import { INCH_PER_MM, inchFigure, nearestInch } from '../units/nearest-inch.ts';

/** A length as one marks it with a tape: the nearest millimetre and the nearest 1/32 in, and what each rounding adds. */
export interface Marked {
  readonly exact: number;
  readonly mm: number;
  /** Marked minus exact, mm. */
  readonly mmOff: number;
  /** Inches off the tape, as `9 27⁄32`. */
  readonly inches: string;
  readonly inchesOff: number;
}

/** The nearest marks to a length in mm; half-way goes away from zero. */
export function marked(exact: number): Marked {
  const mm = Number(roundHalfAway(fractionOfNumber(exact)));
  return {
    exact,
    mm,
    mmOff: mm - exact,
    inches: inchFigure(nearestInch(multiply(fractionOfNumber(exact), INCH_PER_MM), 32)),
    inchesOff: inchRoundingError(exact, { fraction: 32 }),
  };
}
