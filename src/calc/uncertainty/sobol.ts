import { BITS, directionNumbers } from './direction-numbers.ts';
import { seeded } from './seeded.ts';

const word = (random: () => number): number => Math.floor(random() * 2 ** BITS) >>> 0;

function parity(word: number): number {
  let bits = word ^ (word >>> 16);
  bits ^= bits >>> 8;
  bits ^= bits >>> 4;
  return (0x6996 >>> (bits & 15)) & 1;
}

/** Direction numbers with every bit mixed with those above it by chance (J. Matoušek, 1998). */
function mixed(numbers: Uint32Array, random: () => number): Uint32Array {
  const masks = Array.from({ length: BITS }, (_, bit) => {
    const own = 2 ** (BITS - 1 - bit);
    const above = bit === 0 ? 0 : (0xffffffff << (BITS - bit)) >>> 0;
    return ((word(random) & above) | own) >>> 0;
  });
  return Uint32Array.from(numbers, (it) => {
    let made = 0;
    for (const mask of masks) made = (made << 1) | parity((it & mask) >>> 0);
    return made >>> 0;
  });
}

const known: Uint32Array[] = [];

function numbersOf(dimensions: number): readonly Uint32Array[] {
  if (known.length < dimensions) known.splice(0, known.length, ...directionNumbers(dimensions));
  return known;
}

/**
 * Points of Sobol's low-discrepancy sequence (1967) in the unit cube, one column for each dimension, scrambled by a
 * seed: each point by itself is evenly drawn, and all together leave no large gap. A power of two as count keeps them
 * balanced. The same seed gives the same points everywhere; values are above 0 and below 1.
 */
export function sobolPoints(dimensions: number, count: number, seed: number): Float64Array[] {
  const random = seeded(seed);
  return numbersOf(dimensions)
    .slice(0, dimensions)
    .map((numbers) => {
      const v = mixed(numbers, random);
      let at = word(random);
      const column = new Float64Array(count);
      for (let n = 0; n < count; n++) {
        column[n] = ((at >>> 0) + 0.5) / 2 ** BITS;
        // In Gray's order each point differs from the one before it by a single direction number.
        at ^= v[31 - Math.clz32(~n & (n + 1))] ?? 0;
      }
      return column;
    });
}
