import type { Counts } from './kinds.ts';

/**
 * Every filling of one tube that holds the longest piece wanted and wastes no more than `waste`. A filling in which a
 * longer piece, left over elsewhere, could stand in for one of its pieces or for its rest is passed over: changing the
 * two places makes another plan with as many tubes, so none is lost (dominance; Martello and Toth 1990, section 8.5).
 * Stops after `most` fillings.
 */
export function fillingsWithLongest(
  tube: number,
  sizes: readonly number[],
  wanted: Counts,
  waste: number,
  most: number,
): Counts[] {
  const longest = wanted.findIndex((count) => count > 0);
  const counts: number[] = sizes.map((_, i) => (i === longest ? 1 : 0));
  const found: Counts[] = [];
  const spare = (i: number): number => (wanted[i] as number) - (counts[i] as number);

  /** Whether a longer spare piece fits in place of one of these, or any spare piece in the rest. */
  const isBeaten = (rest: number): boolean => {
    let shorterUsed = 0;
    // From the shortest up: `shorterUsed` is the longest piece used so far that is shorter than the one looked at.
    for (let i = sizes.length - 1; i >= longest; i--) {
      const size = sizes[i] as number;
      if (spare(i) > 0 && size <= shorterUsed + rest) return true;
      const movable = (counts[i] as number) - (i === longest ? 1 : 0);
      if (movable > 0) shorterUsed = size;
    }
    return false;
  };

  const add = (i: number, rest: number): void => {
    if (found.length >= most) return;
    if (i === sizes.length) {
      if (rest <= waste && !isBeaten(rest)) found.push([...counts]);
      return;
    }
    const size = sizes[i] as number;
    const fits = Math.min(spare(i), Math.floor(rest / size));
    for (let count = fits; count >= 0; count--) {
      counts[i] = (counts[i] as number) + count;
      add(i + 1, rest - count * size);
      counts[i] = (counts[i] as number) - count;
    }
  };
  add(longest, tube - (sizes[longest] as number));
  return found;
}
