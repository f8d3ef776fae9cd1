import { primitives } from './primitive.ts';
import { seeded } from './seeded.ts';

/** Bits of a point's coordinate. */
export const BITS = 32;

/**
 * First numbers of the second dimension on, one row for each primitive polynomial in order of degree and size: the
 * beginning of the table of S. Joe and F. Y. Kuo, 2008, made for good pairs of dimensions; from memory.
 */
const FIRST: readonly (readonly number[])[] = [
  [1],
  [1, 3],
  [1, 3, 1],
  [1, 1, 1],
  [1, 1, 3, 3],
  [1, 3, 5, 13],
  [1, 1, 5, 5, 17],
  [1, 1, 5, 5, 5],
  [1, 1, 7, 11, 19],
  [1, 1, 5, 1, 1],
  [1, 1, 1, 3, 11],
  [1, 3, 5, 5, 31],
  [1, 3, 3, 9, 7, 49],
  [1, 1, 1, 15, 21, 21],
  [1, 3, 1, 13, 27, 49],
  [1, 1, 1, 15, 7, 5],
  [1, 3, 1, 15, 13, 25],
  [1, 1, 5, 5, 19, 61],
  [1, 3, 7, 11, 23, 15, 103],
  [1, 3, 7, 13, 13, 15, 69],
];

/** Odd numbers of at most 1, 2, 3... bits: any such start gives a proper sequence. */
const drawn = (degree: number, random: () => number): number[] =>
  Array.from({ length: degree }, (_, i) => 2 * Math.floor(random() * 2 ** i) + 1);

function column(bits: number, degree: number, first: readonly number[]): Uint32Array {
  const v = new Uint32Array(BITS);
  for (const [i, it] of first.entries()) v[i] = it << (BITS - 1 - i);
  for (let i = degree; i < BITS; i++) {
    const last = v[i - degree] ?? 0;
    let next = last ^ (last >>> degree);
    for (let k = 1; k < degree; k++) if ((bits >>> (degree - k)) & 1) next ^= v[i - k] ?? 0;
    v[i] = next;
  }
  return v;
}

/** Direction numbers of Sobol's sequence, 32 to a dimension. After the table's end the first ones are drawn. */
export function directionNumbers(dimensions: number): readonly Uint32Array[] {
  const columns: Uint32Array[] = [Uint32Array.from({ length: BITS }, (_, i) => 2 ** (BITS - 1 - i))];
  const random = seeded(1);
  const polynomials = primitives();
  while (columns.length < dimensions) {
    const { degree, bits } = polynomials.next().value;
    columns.push(column(bits, degree, FIRST[columns.length - 1] ?? drawn(degree, random)));
  }
  return columns;
}
