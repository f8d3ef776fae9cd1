import { lengthPieces } from '../units/format-length.ts';
import { formatNumber } from '../units/format-number.ts';
import { joinPiece } from '../units/piece.ts';
import type { ShownUnit } from './options.ts';

/** A lettered value: what comes first, and what stands after or under it. */
export interface Figure {
  readonly first: string;
  readonly second?: string;
}

const MOST_DECIMALS = 3;

/** The plainest lettering in which value and bound, if they differ, do not read the same. */
function telling(
  value: number,
  bound: number | null,
  letter: (value: number, decimals?: number) => string,
): string {
  if (bound === null || value === bound || letter(value) !== letter(bound)) return letter(value);
  for (let decimals = 2; decimals < MOST_DECIMALS; decimals++) {
    if (letter(value, decimals) !== letter(bound, decimals)) return letter(value, decimals);
  }
  return letter(value, MOST_DECIMALS);
}

/** A length, mm, in the unit shown; told apart from `bound` by as many decimals as it takes. */
export function lengthFigure(mm: number, unit: ShownUnit, bound: number | null = null): Figure {
  const metric = (): string => telling(mm, bound, (value, decimals) => formatNumber(value, 'mm', decimals));
  const [inch = ''] = lengthPieces(mm, { unit: 'in' }).map(joinPiece);
  if (unit === 'in') return { first: inch };
  return unit === 'mm' ? { first: metric() } : { first: metric(), second: inch };
}

export const angleFigure = (degrees: number, bound: number | null = null): Figure => ({
  first: telling(degrees, bound, (value, decimals) => formatNumber(value, 'deg', decimals)),
});

/** Stands where nothing has been read yet. */
export const unread: Figure = { first: '?' };
