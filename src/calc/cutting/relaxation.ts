import { CoverBasis } from './cover-basis.ts';
import { heaviestFillings } from './heaviest.ts';
import { type Counts, type Filling, isWithin, sumOfAll, sumOver } from './kinds.ts';
import type { Work } from './work.ts';

/** Weights are whole numbers; the price of a whole tube is this many. */
const TUBE_WEIGHT = 2 ** 20;

/** What a filling has to be worth beyond a tube before it is taken in, in tubes. */
const WORTH = 1e-6;

/** Steps of work to look whether a known filling can still be cut. */
const FIT = 4;

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
  readonly cover: readonly { readonly filling: Filling; readonly amount: number }[];
}

/**
 * The least number of tubes by linear programming with fillings made as they are needed (Gilmore and Gomory 1961), and
 * its proof in whole numbers (any weights give one: Farley 1990). Ends as soon as more than `enough` tubes are proven, or
 * a cover in fractions of no more than `enough` is found, so that no proof can follow. Fillings made are added to
 * `known`, for the next question about some of the same pieces.
 */
export function relax(
  tube: number,
  sizes: readonly number[],
  wanted: Counts,
  enough: number,
  known: Filling[],
  work: Work,
): Relaxation {
  const basis = new CoverBasis(
    wanted,
    sizes.map((size, i) => Math.min(wanted[i] as number, Math.floor(tube / size))),
  );
  const usable = known.filter((filling) => isWithin(wanted, filling));
  work.spend(known.length * FIT);
  let best: Omit<Relaxation, 'cover'> | undefined;
  for (;;) {
    work.spend(basis.size + usable.length);
    if (best !== undefined && (work.isDone || basis.total() <= enough + WORTH))
      return { ...best, cover: basis.inUse() };
    const prices = basis.prices();
    if (!work.isDone && improve(basis, usable, prices)) continue;
    const weights = prices.map((price) => Math.max(0, Math.round(price * TUBE_WEIGHT)));
    const { weight: most, fillings } = heaviestFillings(tube, sizes, wanted, weights, work);
    const total = sumOfAll(weights, wanted);
    const atLeast = Math.ceil(total / most);
    if (best === undefined || atLeast > best.atLeast) best = { atLeast, proof: { weights, most, total } };
    const made = fillings.filter((it) => it.weight > TUBE_WEIGHT * (1 + WORTH)).map((it) => it.filling);
    const next = dearest(made, prices);
    if (next === undefined || best.atLeast > enough) return { ...best, cover: basis.inUse() };
    usable.push(...made);
    known.push(...made);
    basis.takeFilling(next);
  }
}

/** One exchange by what is known already; false when none is left. */
function improve(basis: CoverBasis, usable: readonly Filling[], prices: readonly number[]): boolean {
  const filling = dearest(usable, prices);
  if (filling !== undefined) {
    basis.takeFilling(filling);
    return true;
  }
  const lowest = prices.indexOf(Math.min(...prices));
  if ((prices[lowest] as number) >= -WORTH) return false;
  basis.takeTooMany(lowest);
  return true;
}

function dearest(fillings: readonly Filling[], prices: readonly number[]): Filling | undefined {
  let found: Filling | undefined;
  let most = 1 + WORTH;
  for (const filling of fillings) {
    const price = sumOver(prices, filling);
    if (price > most) [found, most] = [filling, price];
  }
  return found;
}
