import { CoverBasis } from './cover-basis.ts';
import { heaviestFilling } from './heaviest.ts';
import type { Counts } from './kinds.ts';
import type { Work } from './work.ts';

/** Weights are whole numbers; the price of a whole tube is this many. */
const TUBE_WEIGHT = 2 ** 20;

/** A filling has to be worth this much more than a tube before it is taken in. */
const WORTH = 1e-7;

/**
 * A proof in whole numbers that fewer tubes will not do: every kind has a weight, no filling of a tube weighs more than
 * `most`, and what is wanted weighs `total`.
 */
export interface Proof {
  readonly weights: readonly number[];
  readonly most: number;
  readonly total: number;
}

export interface Relaxation {
  /** Tubes that any plan needs. */
  readonly atLeast: number;
  readonly proof: Proof;
  /** Fillings that cover what is wanted in fractions of tubes, most used first. */
  readonly fillings: readonly { readonly counts: Counts; readonly amount: number }[];
}

const weightOf = (weights: readonly number[], counts: Counts): number =>
  counts.reduce((sum, count, i) => sum + count * (weights[i] ?? 0), 0);

/**
 * The least number of tubes by linear programming with fillings made as they are needed (Gilmore and Gomory 1961), and
 * its proof in whole numbers (any weights give one: Farley 1990). Ends as soon as more than `enough` tubes are proven, or
 * a cover in fractions of no more than `enough` is found, so that no proof can follow.
 */
export function relax(
  tube: number,
  sizes: readonly number[],
  wanted: Counts,
  enough: number,
  known: Counts[],
  work: Work,
): Relaxation {
  const mostPerTube = sizes.map((size, i) => Math.min(wanted[i] ?? 0, Math.floor(tube / size)));
  const basis = new CoverBasis(wanted, mostPerTube);
  const usable = known.filter((counts) => counts.every((count, i) => count <= (wanted[i] ?? 0)));
  let best: Omit<Relaxation, 'fillings'> | undefined;
  for (;;) {
    work.spend(1);
    if (best !== undefined && basis.total() <= enough + WORTH) return { ...best, fillings: basis.inUse() };
    const prices = basis.prices();
    const tooDear = prices.findIndex((price) => price < -WORTH);
    if (tooDear >= 0) {
      basis.takeTooMany(tooDear);
      continue;
    }
    const kept = heaviestOf(usable, prices);
    if (kept !== undefined && !work.isDone) {
      basis.takeFilling(kept);
      continue;
    }
    const weights = prices.map((price) => Math.max(0, Math.round(price * TUBE_WEIGHT)));
    const filling = heaviestFilling(tube, sizes, wanted, weights);
    const total = weightOf(weights, wanted);
    const atLeast = Math.ceil(total / filling.weight);
    if (best === undefined || atLeast > best.atLeast)
      best = { atLeast, proof: { weights, most: filling.weight, total } };
    const isBest = filling.weight <= TUBE_WEIGHT * (1 + WORTH) + sizes.length;
    if (isBest || best.atLeast > enough || work.isDone) return { ...best, fillings: basis.inUse() };
    usable.push(filling.counts);
    known.push(filling.counts);
    basis.takeFilling(filling.counts);
  }
}

function heaviestOf(fillings: readonly Counts[], prices: readonly number[]): Counts | undefined {
  let heaviest: Counts | undefined;
  let most = 1 + 1e-6;
  for (const counts of fillings) {
    const price = weightOf(prices, counts);
    if (price > most) [heaviest, most] = [counts, price];
  }
  return heaviest;
}
