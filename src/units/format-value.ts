import { type LengthStyle, lengthPieces } from './format-length.ts';
import { numberPiece } from './format-number.ts';
import { joinPieces, NO_ANSWER, type Piece } from './piece.ts';

/** TRUE and FALSE as a person reads them. */
export const formatFlag = (flag: boolean): 'yes' | 'no' => (flag ? 'yes' : 'no');

/**
 * Any value a cell can hold, in its base unit, as figures and units apart. Lengths follow the style; `decimals` of
 * the style is for lengths alone. Text stands for itself.
 */
export const valuePieces = (
  value: number | boolean | string | null,
  unit: string,
  style: LengthStyle,
): readonly Piece[] => {
  if (value === null) return [NO_ANSWER];
  if (typeof value === 'boolean') return [{ figure: formatFlag(value), unit: '' }];
  if (typeof value === 'string') return [{ figure: value, unit: '' }];
  return unit === 'mm' ? lengthPieces(value, style) : [numberPiece(value, unit)];
};

/** The same as one line of text. */
export const formatValue = (
  value: number | boolean | string | null,
  unit: string,
  style: LengthStyle,
): string => joinPieces(valuePieces(value, unit, style));
