import type { Counts, Filling } from './kinds.ts';
import type { Work } from './work.ts';

/** For each kind that is the last of some filling, the heaviest such filling. */
export interface Heaviest {
  /** The greatest sum of weights that one tube holds. */
  readonly weight: number;
  readonly fillings: readonly { readonly filling: Filling; readonly weight: number }[];
}

/**
 * The greatest sum of weights in one tube, of at most `wanted` pieces of each kind. Sizes and weights are whole numbers.
 * Exact: every load that no filling of that load or less outweighs is carried along, piece by piece (Nemhauser and
 * Ullmann's list for the knapsack).
 */
export function heaviestFillings(
  tube: number,
  sizes: readonly number[],
  wanted: Counts,
  weights: readonly number[],
  work: Work,
): Heaviest {
  // Each entry is the one at `before` with one more piece of `kind`; the first is the empty tube.
  const before = [0];
  const kind = [-1];
  let loads = [0];
  let sums = [0];
  let entries = [0];
  const last: { entry: number; weight: number }[] = [];
  sizes.forEach((size, i) => {
    const weight = weights[i] as number;
    const most = weight > 0 ? Math.min(wanted[i] as number, Math.floor(tube / size)) : 0;
    let heaviestHere = { entry: 0, weight: 0 };
    for (let copy = 0; copy < most; copy++) {
      const [nextLoads, nextSums, nextEntries]: [number[], number[], number[]] = [[], [], []];
      const count = loads.length;
      let heaviest = -1;
      let [kept, added, length] = [0, 0, 0];
      // The list as it is and the list with one more piece are merged by load; the second lags behind the first.
      while (added < count) {
        const more = (loads[added] as number) + size;
        const isOld = kept < count && (loads[kept] as number) <= more;
        const load = isOld ? (loads[kept] as number) : more;
        if (load > tube) break;
        const from = isOld ? kept++ : added++;
        const sum = (sums[from] as number) + (isOld ? 0 : weight);
        if (sum <= heaviest) continue;
        heaviest = sum;
        // Of two fillings with one load the heavier stays.
        if (length > 0 && nextLoads[length - 1] === load) length--;
        nextLoads[length] = load;
        nextSums[length] = sum;
        if (isOld) nextEntries[length] = entries[from] as number;
        else {
          nextEntries[length] = before.length;
          if (sum > heaviestHere.weight) heaviestHere = { entry: before.length, weight: sum };
          before.push(entries[from] as number);
          kind.push(i);
        }
        length++;
      }
      work.spend(length);
      [loads, sums, entries] = [nextLoads, nextSums, nextEntries];
    }
    if (heaviestHere.entry > 0) last.push(heaviestHere);
  });
  const fillingAt = (entry: number): Filling => {
    const filling: number[] = [];
    for (let at = entry; at > 0; at = before[at] as number) filling.push(kind[at] as number);
    return filling.reverse();
  };
  return {
    weight: sums.at(-1) ?? 0,
    fillings: last.map(({ entry, weight }) => ({ filling: fillingAt(entry), weight })),
  };
}
