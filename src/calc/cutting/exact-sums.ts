import type { Counts, Filling } from './kinds.ts';

/** Different sums carried along, at the most. */
const MOST_SUMS = 20_000;

/** Sums up to `most` that pieces from kind i on can make, for every i; nothing when there are too many to carry. */
function sumsFrom(sizes: readonly number[], wanted: Counts, most: number): Set<number>[] | undefined {
  const sums: Set<number>[] = sizes.map(() => new Set());
  let after = new Set([0]);
  for (let i = sizes.length - 1; i >= 0; i--) {
    const size = sizes[i] as number;
    const here = new Set<number>();
    for (const sum of after) {
      for (let count = 0; count <= (wanted[i] as number) && sum + count * size <= most; count++)
        here.add(sum + count * size);
      if (here.size > MOST_SUMS) return undefined;
    }
    sums[i] = here;
    after = here;
  }
  return sums;
}

/** Choices of pieces with a given sum, and the sums there are, in ascending order. */
export interface ExactSums {
  readonly sums: readonly number[];
  readonly choices: (sum: number) => Generator<Filling>;
}

export function exactSums(sizes: readonly number[], wanted: Counts, most: number): ExactSums | undefined {
  const from = sumsFrom(sizes, wanted, most);
  if (from === undefined) return undefined;
  function* choose(kind: number, rest: number, filling: number[]): Generator<Filling> {
    if (rest === 0) yield filling;
    else if (from?.[kind]?.has(rest)) {
      const size = sizes[kind] as number;
      const most = Math.min(wanted[kind] as number, Math.floor(rest / size));
      for (let count = most; count >= 0; count--)
        yield* choose(kind + 1, rest - count * size, [...filling, ...Array<number>(count).fill(kind)]);
    }
  }
  return { sums: [...(from[0] ?? [])].sort((a, b) => a - b), choices: (sum) => choose(0, sum, []) };
}
