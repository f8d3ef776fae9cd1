import { normalQuantile } from '../../calc/uncertainty/normal.ts';

/** The least chance that has a place of its own; what is smaller stands at the end. */
export const LEAST = 1e-6;

/** Chances lettered along the picture, with their words. */
export const TICKS: readonly (readonly [chance: number, word: string])[] = [
  [1e-6, '1 in a million'],
  [1e-4, '1 in 10,000'],
  [1e-2, '1 in 100'],
  [0.5, 'half'],
  [0.99, '99 %'],
];

const [FROM, TO] = [normalQuantile(LEAST), normalQuantile(0.9999)];

/** A chance's place from left (0) to right (1), even in deviations so that small ones and large ones both have room. */
export const placeOf = (chance: number): number =>
  Math.min(1, Math.max(0, (normalQuantile(Math.min(1 - 1e-9, Math.max(1e-9, chance))) - FROM) / (TO - FROM)));
