import { decimalFigure } from './decimal-figure.ts';
import { LARGEST_PLAIN, numberPiece } from './format-number.ts';
import { divide, type Fraction, multiply, subtract } from './fraction.ts';
import { fractionOfNumber } from './fraction-of-decimal.ts';
import { INCH_PER_MM, type InchParts, inchFigure, nearestInch } from './nearest-inch.ts';
import { numberOfFraction } from './number-of-fraction.ts';
import { joinPieces, NO_ANSWER, type Piece } from './piece.ts';
import { roundDecimal } from './round-decimal.ts';

/** How lengths are shown. */
export type LengthStyle = {
  /** `both` is millimetres first and inches after. */
  readonly unit: 'mm' | 'in' | 'both';
  /** Parts of an inch; 16 when left out. */
  readonly fraction?: InchParts | undefined;
  /** Decimals of the millimetres; with unit `in` and no `fraction`, decimals of the inches instead of a fraction. */
  readonly decimals?: number | undefined;
};

const DEFAULT_PARTS = 16;

const inchDecimals = ({ unit, fraction, decimals }: LengthStyle): number | undefined =>
  unit === 'in' && fraction === undefined ? decimals : undefined;

const shownInches = (mm: number, style: LengthStyle): Fraction => {
  const inches = multiply(fractionOfNumber(mm), INCH_PER_MM);
  const decimals = inchDecimals(style);
  return decimals === undefined
    ? nearestInch(inches, style.fraction ?? DEFAULT_PARTS)
    : roundDecimal(inches, decimals);
};

const inchPiece = (mm: number, style: LengthStyle): Piece => {
  const shown = shownInches(mm, style);
  const decimals = inchDecimals(style);
  return { figure: decimals === undefined ? inchFigure(shown) : decimalFigure(shown, decimals), unit: 'in' };
};

/** A length in mm as figures and units apart: one piece, or two for `both`. From 1e15 mm up it stays in mm. */
export const lengthPieces = (mm: number, style: LengthStyle): readonly Piece[] => {
  if (!Number.isFinite(mm)) return [NO_ANSWER];
  const millimetres = numberPiece(mm, 'mm', style.decimals);
  if (style.unit === 'mm' || Math.abs(mm) >= LARGEST_PLAIN) return [millimetres];
  return style.unit === 'in' ? [inchPiece(mm, style)] : [millimetres, inchPiece(mm, style)];
};

/**
 * A length in mm as one line: `319.1 mm`, `12 9⁄16 in`, `319.1 mm (12 9⁄16 in)`. Inches are the nearest 16th, 32nd or
 * 64th, reduced; half-way goes away from zero (ASTM E29 leaves the rule to be stated).
 */
export const formatLength = (mm: number, style: LengthStyle): string => joinPieces(lengthPieces(mm, style));

/**
 * What rounding adds to the inches shown: shown minus true, in mm, so 10 mm shown as 3⁄8 in gives -0.475.
 * Throws when mm is not finite.
 */
export const inchRoundingError = (mm: number, style: Omit<LengthStyle, 'unit'> = {}): number => {
  const shown = divide(shownInches(mm, { ...style, unit: 'in' }), INCH_PER_MM);
  return numberOfFraction(subtract(shown, fractionOfNumber(mm)));
};
