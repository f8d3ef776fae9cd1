import { BITS, directionNumbers } from './direction-numbers.ts';
import { seeded } from './seeded.ts';

const word = (random: () => number): number => Math.floor(random() * 2 ** BITS) >>> 0;

/** Does something for every bit that is set, the highest first. */
function eachBit(bits: number, something: (bit: number) => void): void {
  for (let left = bits; left !== 0; ) {
    const highest = BITS - 1 - Math.clz32(left);
    something(highest);
    left = (left ^ (1 << highest)) >>> 0;
  }
}

/** Direction numbers with every bit mixed with those above it by chance (J. Matoušek, 1998). */
function mixed(numbers: Uint32Array, random: () => number): Uint32Array {
  // What a single bit of a number turns into, by its place from the lowest.
  const ofBit = new Uint32Array(BITS);
  for (let bit = 0; bit < BITS; bit++) {
    const own = 2 ** (BITS - 1 - bit);
    const above = bit === 0 ? 0 : (0xffffffff << (BITS - bit)) >>> 0;
    const mask = (word(random) & above) | own;
    eachBit(mask, (k) => {
      ofBit[k] = (ofBit[k] as number) | own;
    });
  }
  return numbers.map((it) => {
    let made = 0;
    eachBit(it, (k) => {
      made ^= ofBit[k] as number;
    });
    return made;
  });
}

const known: Uint32Array[] = [];

function numbersOf(dimensions: number): readonly Uint32Array[] {
  if (known.length < dimensions) known.splice(0, known.length, ...directionNumbers(dimensions));
  return known;
}

/**
 * Sobol's low-discrepancy sequence (1967) in the unit cube, scrambled by a seed: each point by itself is evenly drawn,
 * and all together leave no large gap. A power of two as count keeps them balanced. The same seed gives the same points
 * everywhere; values are above 0 and below 1.
 */
export class SobolSequence {
  readonly #directions: readonly Uint32Array[];
  readonly #at: Uint32Array;
  #done = 0;

  constructor(dimensions: number, seed: number) {
    const random = seeded(seed);
    this.#at = new Uint32Array(dimensions);
    this.#directions = numbersOf(dimensions)
      .slice(0, dimensions)
      .map((numbers, dimension) => {
        const directions = mixed(numbers, random);
        this.#at[dimension] = word(random);
        return directions;
      });
  }

  /** Puts the next `count` points into columns, one for each dimension. */
  next(columns: readonly Float64Array[], count: number): void {
    const from = this.#done;
    for (const [dimension, directions] of this.#directions.entries()) {
      const column = columns[dimension] as Float64Array;
      let at = this.#at[dimension] as number;
      for (let i = 0; i < count; i++) {
        const n = from + i;
        column[i] = ((at >>> 0) + 0.5) / 2 ** BITS;
        // In Gray's order each point differs from the one before it by a single direction number.
        at ^= directions[BITS - 1 - Math.clz32(~n & (n + 1))] as number;
      }
      this.#at[dimension] = at;
    }
    this.#done += count;
  }
}

/** The first `count` points of a sequence, one column for each dimension. */
export function sobolPoints(dimensions: number, count: number, seed: number): Float64Array[] {
  const columns = Array.from({ length: dimensions }, () => new Float64Array(count));
  new SobolSequence(dimensions, seed).next(columns, count);
  return columns;
}
