import { lengthPieces } from '../../units/format-length.ts';
import { numberPiece } from '../../units/format-number.ts';
import type { Facts } from './facts.ts';
import type { BookRow } from './rows.ts';

/** Whether a reading of this input can be off at all: counts, words and yes or no cannot. */
export const hasOffBy = ({ cell }: BookRow): boolean => cell.kind !== 'result' && cell.type === 'number';

/** How far a reading may be off, in the unit its value is shown in first; small lengths to a 64th of an inch. */
export function offByFigure(row: BookRow, { reading, units }: Facts): string {
  if (!hasOffBy(row) || reading?.offBy === undefined) return '';
  const { offBy } = reading;
  if (offBy === 0) return '0';
  const { unit } = row.cell;
  const [piece] =
    unit === 'mm' && units === 'in'
      ? lengthPieces(offBy, { unit: 'in', fraction: 64 })
      : [plain(offBy, unit)];
  return piece?.figure ?? '';
}

/** Decimals enough to show what is there: 0.035 is not 0.04. */
function plain(offBy: number, unit: string) {
  const usual = numberPiece(offBy, unit);
  const digits = String(offBy);
  return digits.length <= 6 && !digits.includes('e') ? { ...usual, figure: digits } : usual;
}
