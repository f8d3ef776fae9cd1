import type { ShownUnit } from './options.ts';

/** A lettered value: what comes first, and what stands after or under it. */
export interface Figure {
  readonly first: string;
  readonly second?: string;
}

const MM_PER_INCH = 25.4;
const SIXTEENTHS = 16;

const signed = (negative: boolean, text: string): string => (negative ? `−${text}` : text);

/** Whole numbers bare, others with as many decimals as asked for. */
export function plain(value: number, decimals: number): string {
  const text = Math.abs(value).toFixed(decimals);
  const trimmed = text.includes('.') ? text.replace(/\.?0+$/, '') : text;
  return signed(value < 0 && Number(trimmed) !== 0, trimmed);
}

/** Nearest sixteenth of an inch with a fraction slash, which the typeface sets as one fraction. */
export function inches(mm: number): string {
  const parts = Math.round((Math.abs(mm) / MM_PER_INCH) * SIXTEENTHS);
  const whole = Math.floor(parts / SIXTEENTHS);
  let top = parts % SIXTEENTHS;
  let bottom = SIXTEENTHS;
  while (top > 0 && top % 2 === 0) {
    top /= 2;
    bottom /= 2;
  }
  const fraction = top === 0 ? '' : `${top}⁄${bottom}`;
  const text = fraction === '' ? `${whole}` : whole === 0 ? fraction : `${whole} ${fraction}`;
  return `${signed(mm < 0 && parts > 0, text)} in`;
}

/** Fewest decimals, from one up to three, at which value and bound do not read the same although they differ. */
function tellingDecimals(value: number, bound: number | null): number {
  let decimals = 1;
  if (bound === null || value === bound) return decimals;
  while (decimals < 3 && plain(value, decimals) === plain(bound, decimals)) decimals++;
  return decimals;
}

/** A length, mm, in the unit shown; told apart from `bound` by as many decimals as it takes. */
export function lengthFigure(mm: number, unit: ShownUnit, bound: number | null = null): Figure {
  const metric = `${plain(mm, tellingDecimals(mm, bound))} mm`;
  if (unit === 'mm') return { first: metric };
  return unit === 'in' ? { first: inches(mm) } : { first: metric, second: inches(mm) };
}

export const angleFigure = (degrees: number, bound: number | null = null): Figure => ({
  first: `${plain(degrees, tellingDecimals(degrees, bound))}°`,
});

export const countFigure = (count: number): Figure => ({ first: plain(count, 2) });

/** Stands where nothing has been read yet. */
export const unread: Figure = { first: '?' };
