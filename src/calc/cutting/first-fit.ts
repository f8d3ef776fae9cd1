import type { Counts, Filling } from './kinds.ts';

/** The plan that cuts each piece, longest first, from the first tube it fits in. */
export function firstFit(tube: number, sizes: readonly number[], wanted: Counts): Filling[] {
  const tubes: { filling: number[]; rest: number }[] = [];
  sizes.forEach((size, kind) => {
    let first = 0;
    for (let left = wanted[kind] as number; left > 0; left--) {
      while (first < tubes.length && (tubes[first]?.rest ?? 0) < size) first++;
      if (first === tubes.length) tubes.push({ filling: [], rest: tube });
      const into = tubes[first];
      if (into === undefined) continue;
      into.filling.push(kind);
      into.rest -= size;
    }
  });
  return tubes.map((it) => it.filling);
}
