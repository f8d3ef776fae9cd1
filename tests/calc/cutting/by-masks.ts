/**
 * The fewest tubes and the least load of one of them, over every order of cutting: for each set of pieces the least
 * pair (tubes, load of the last), made longer by one piece. Sizes and tube as whole numbers, kerf counted in.
 */
export function byMasks(sizes: readonly number[], tube: number): { tubes: number; lightest: number } {
  const all = 2 ** sizes.length;
  const tubes = new Array<number>(all).fill(Number.POSITIVE_INFINITY);
  const loads = new Array<number>(all).fill(0);
  tubes[0] = 0;
  loads[0] = tube;
  for (let mask = 0; mask < all; mask++) {
    sizes.forEach((size, i) => {
      const next = mask | (1 << i);
      if (next === mask) return;
      const opens = (loads[mask] as number) + size > tube;
      const [count, load] = opens
        ? [(tubes[mask] as number) + 1, size]
        : [tubes[mask] as number, (loads[mask] as number) + size];
      const [best, bestLoad] = [tubes[next] as number, loads[next] as number];
      if (count < best || (count === best && load < bestLoad)) [tubes[next], loads[next]] = [count, load];
    });
  }
  return { tubes: tubes[all - 1] as number, lightest: loads[all - 1] as number };
}
