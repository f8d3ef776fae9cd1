import type { Words } from '../words.ts';
import { capital, told } from '../words.ts';
import type { MapAxis } from './axis.ts';
import type { Ground } from './look-at.ts';
import type { Mapped } from './map.ts';
import type { Widest } from './widest.ts';

/** A share as it is said: `23 %`, `less than 1 %`. */
export function percent(share: number): string {
  if (share > 0 && share < 0.01) return 'less than 1 %';
  if (share < 1 && share > 0.99) return 'more than 99 %';
  return `${Math.round(share * 100)} %`;
}

/** One side's value: `5 shims`, `the upper bracket at 812 mm`. */
function settingWords({ input }: MapAxis, value: number, words: Words): string {
  const cell = words.cell(input);
  return cell.noun === undefined ? `the ${cell.short} at ${cell.figure(value)}` : told(cell, value);
}

/** A place in a map: `5 shims with the upper bracket at 812 mm`. */
export const placeWords = (
  { ask }: Pick<Mapped, 'ask'>,
  place: { readonly x: number; readonly y: number },
  words: Words,
): string => `${settingWords(ask.x, place.x, words)} with ${settingWords(ask.y, place.y, words)}`;

/** What stands at a place: `the limit on rudder gap fails, and 2 more`. */
export function groundWords(ground: Ground, words: Words): string {
  switch (ground.is) {
    case 'allowed':
      return 'every limit holds';
    case 'refused':
      return 'the two cannot be so together';
    case 'failing': {
      const more = ground.more === 0 ? '' : `, and ${ground.more} more`;
      return `the limit on ${words.limit(ground.limit).short} fails${more}`;
    }
  }
}

const limitOf = ({ limit }: Widest, words: Words): string =>
  limit === undefined ? '' : words.limit(limit).short;

/** A map in one sentence: how much of it holds, and where there is most room. */
export function mapSentence(mapped: Mapped, words: Words): string {
  const { share, widest } = mapped;
  if (widest === undefined) return 'Nothing in this picture has an answer.';
  const where = placeWords(mapped, widest, words);
  if (widest.room < 0) {
    return `Nowhere in this picture does everything hold; the limit on ${limitOf(widest, words)} comes nearest to holding at ${where}.`;
  }
  const ground =
    share >= 1
      ? 'Everything holds in the whole of this picture'
      : share <= 0
        ? 'Everything holds in hardly any of this picture'
        : `Everything holds in ${percent(share)} of this picture`;
  const least =
    widest.limit === undefined ? '' : `, where the limit on ${limitOf(widest, words)} is the nearest`;
  return `${capital(ground)}; the widest spot is ${where}${least}.`;
}
