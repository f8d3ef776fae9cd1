import { type Ask, numberOf } from './ask.ts';

export type FootSide = 'port' | 'starboard' | 'single';

/** Everything bolted to the transom. */
export type Place = 'lower' | FootSide;

/** The feet in use, as far as the number of struts is known. */
export function feetInUse(ask: Ask): readonly FootSide[] {
  const count = numberOf(ask, 'strut_count');
  if (count === 1) return ['single'];
  return count === 2 ? ['port', 'starboard'] : [];
}

export const placeWords: Readonly<Record<Place, string>> = {
  lower: 'Lower bracket',
  port: 'Port foot',
  starboard: 'Starboard foot',
  single: 'Single foot',
};
