import type { Counts } from './kinds.ts';

/** The plan that cuts each piece, longest first, from the first tube it fits in. */
export function firstFit(tube: number, sizes: readonly number[], wanted: Counts): Counts[] {
  const tubes: { counts: number[]; rest: number }[] = [];
  sizes.forEach((size, i) => {
    let first = 0;
    for (let left = wanted[i] ?? 0; left > 0; ) {
      while (first < tubes.length && (tubes[first]?.rest ?? 0) < size) first++;
      const into = tubes[first] ?? { counts: sizes.map(() => 0), rest: tube };
      if (first === tubes.length) tubes.push(into);
      const count = Math.min(left, Math.floor(into.rest / size));
      into.counts[i] = count;
      into.rest -= count * size;
      left -= count;
    }
  });
  return tubes.map((it) => it.counts);
}
