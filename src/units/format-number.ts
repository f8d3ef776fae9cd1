import { decimalFigure, MINUS } from './decimal-figure.ts';
import { fractionOfNumber } from './fraction-of-decimal.ts';
import { joinPiece, NO_ANSWER, type Piece } from './piece.ts';

/** From here up digits after digits say nothing; such a value is written with its power of ten. */
export const LARGEST_PLAIN = 1e15;

/** A value this near to a whole number is one: arithmetic noise gets no decimals of its own. */
const WHOLE_WITHIN = 1e-6;

const isNearlyWhole = (value: number): boolean => Math.abs(value - Math.round(value)) < WHOLE_WITHIN;

const unlessWhole =
  (decimals: number) =>
  (value: number): number =>
    isNearlyWhole(value) ? 0 : decimals;

/** Common practice, no source: decimals that a tape, a level, a scale or a data sheet can bear. */
const DECIMALS: ReadonlyMap<string, (value: number) => number> = new Map([
  ['mm', unlessWhole(1)],
  ['in', () => 2],
  ['deg', () => 1],
  ['kn', (value: number) => (isNearlyWhole(value * 10) ? 1 : 2)],
  ['N', () => 0],
  ['N·m', unlessWhole(1)],
  ['MPa', (value: number) => (Math.abs(value) < 100 ? unlessWhole(1)(value) : 0)],
  ['kg', unlessWhole(1)],
  ['kg/m³', () => 0],
  ['mm²', () => 0],
  ['m²', () => 2],
  ['–', unlessWhole(2)],
  ['%', unlessWhole(1)],
]);

const ON_SCREEN: ReadonlyMap<string, string> = new Map([
  ['deg', '°'],
  ['–', ''],
]);

const plainFigure = (value: number, unit: string, decimals: number | undefined): string => {
  if (Math.abs(value) >= LARGEST_PLAIN) return String(value).replace('-', MINUS).replace('e+', 'e');
  const places = decimals ?? (DECIMALS.get(unit) ?? unlessWhole(2))(value);
  return decimalFigure(fractionOfNumber(value), places);
};

/**
 * A value in its own unit as figure and unit. Without `decimals` the unit decides: mm 1 and plain numbers 2 unless
 * whole, deg 1, kn 1 or 2, N 0, N·m 1 unless whole, MPa 0 from 100 up and else 1 unless whole. Half-way goes away from zero, judged on the
 * shortest decimal that names the double. Not a finite number: `no answer`.
 */
export const numberPiece = (value: number, unit: string, decimals?: number): Piece =>
  Number.isFinite(value)
    ? { figure: plainFigure(value, unit, decimals), unit: ON_SCREEN.get(unit) ?? unit }
    : NO_ANSWER;

/** The same as one line of text: `18.7°`, `2794 N`, `0.86`. */
export const formatNumber = (value: number, unit: string, decimals?: number): string =>
  joinPiece(numberPiece(value, unit, decimals));
