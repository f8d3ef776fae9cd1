import type { Estimate } from '../calc/uncertainty/interval.ts';

const grouped = (n: number): string => String(n).replace(/\B(?=(\d{3})+$)/g, ',');

/** Two figures: 27,306 becomes 27,000. */
function rounded(n: number): number {
  const digit = 10 ** Math.max(0, Math.floor(Math.log10(n)) - 1);
  return Math.round(n / digit) * digit;
}

/** Chances below this are said as one in so many. */
const SMALL = 0.001;
/** Beyond one in this many no figure is worth a thing. */
const MOST = 1e9;

/** A share as a percentage: 96.7 %, 3.3 %, 0.42 %. */
function percent(chance: number): string {
  const near = Math.min(chance, 1 - chance);
  const decimals = near >= 0.1 ? 0 : near >= 0.01 ? 1 : 2;
  return `${(100 * chance).toFixed(decimals)} %`;
}

/** A chance as the owner reads it: 96.7 %, 1 in 4,900, less than 1 in 1,000,000,000. */
export function chanceWords(chance: number): string {
  if (chance <= 0) return 'none';
  if (chance < 1 / MOST) return `less than 1 in ${grouped(MOST)}`;
  if (chance < SMALL) return `1 in ${grouped(rounded(1 / chance))}`;
  if (chance > 1 - SMALL / 10) return chance >= 1 ? '100 %' : 'more than 99.99 %';
  return percent(chance);
}

/** A chance with its interval, never bare: `3.3 % (3.2 % to 3.4 %)`, `less than 1 in 27,000`. */
export function intervalWords({ value, low, high }: Estimate): string {
  if (low <= 0 && value <= 0) return `less than ${chanceWords(high).replace(/^less than /, '')}`;
  const [from, to] = [chanceWords(low), chanceWords(high)];
  if (from === to) return `about ${chanceWords(value)}`;
  if (low <= 0) return `${chanceWords(value)} (at most ${to})`;
  return `${chanceWords(value)} (${from} to ${to})`;
}

/** The chance that something holds, from the chance that it fails. */
export const holdsFrom = ({ value, low, high }: Estimate): Estimate => ({
  value: 1 - value,
  low: 1 - high,
  high: 1 - low,
});

/** A part of a whole with its interval: `65 % (63 to 66)`. */
export function intervalPercent({ value, low, high }: Estimate): string {
  const decimals = high < 0.0995 ? 1 : 0;
  const figure = (part: number): string => (100 * Math.min(1, Math.max(0, part))).toFixed(decimals);
  const [from, to] = [figure(low), figure(high)];
  return from === to ? `${figure(value)} %` : `${figure(value)} % (${from} to ${to})`;
}
