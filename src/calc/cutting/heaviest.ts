import type { Counts } from './kinds.ts';

export interface Filling {
  readonly counts: Counts;
  /** Sum of the weights in it. */
  readonly weight: number;
}

/**
 * The filling of one tube with the greatest sum of weights, of at most `wanted` pieces of each kind. Sizes and weights
 * are whole numbers. Exact: every load that no lighter-or-equal filling outweighs is carried along, piece by piece
 * (Nemhauser and Ullmann's list for the knapsack).
 */
export function heaviestFilling(
  tube: number,
  sizes: readonly number[],
  wanted: Counts,
  weights: readonly number[],
): Filling {
  // Each entry of the list is the one at `before` with one more piece of `kind`.
  const before: number[] = [-1];
  const kind: number[] = [-1];
  let loads = [0];
  let sums = [0];
  let entries = [0];
  sizes.forEach((size, i) => {
    const weight = weights[i] ?? 0;
    const most = Math.min(wanted[i] ?? 0, Math.floor(tube / size));
    if (!(weight > 0)) return;
    for (let copy = 0; copy < most; copy++) {
      const [nextLoads, nextSums, nextEntries]: [number[], number[], number[]] = [[], [], []];
      let heaviest = -1;
      let kept = 0;
      let added = 0;
      while (kept < loads.length || added < loads.length) {
        const old = loads[kept] ?? Number.POSITIVE_INFINITY;
        const more = added < loads.length ? (loads[added] as number) + size : Number.POSITIVE_INFINITY;
        const isOld = old <= more;
        const load = isOld ? old : more;
        if (load > tube) break;
        const from = isOld ? kept++ : added++;
        const sum = (sums[from] as number) + (isOld ? 0 : weight);
        if (sum <= heaviest) continue;
        heaviest = sum;
        // Of two fillings with one load the heavier stays.
        if (nextLoads.at(-1) === load) {
          nextLoads.pop();
          nextSums.pop();
          nextEntries.pop();
        }
        nextLoads.push(load);
        nextSums.push(sum);
        if (isOld) nextEntries.push(entries[from] as number);
        else {
          nextEntries.push(before.length);
          before.push(entries[from] as number);
          kind.push(i);
        }
      }
      [loads, sums, entries] = [nextLoads, nextSums, nextEntries];
    }
  });
  const counts = sizes.map(() => 0);
  for (let at = entries.at(-1) ?? 0; at > 0; at = before[at] as number) {
    const i = kind[at] as number;
    counts[i] = (counts[i] as number) + 1;
  }
  return { counts, weight: sums.at(-1) ?? 0 };
}
