/** Steps to each side of the present value at which the room is looked at. */
export const REACH = 4;

/** Weights of the values 0 to 4 steps away in the slope to one side, exact for polynomials of the fourth degree. */
const ASIDE = [-25 / 12, 4, -3, 4 / 3, -1 / 4];
/** Weights of the differences across 1 to 4 steps in the slope at the middle, exact to the eighth degree. */
const ACROSS = [4 / 5, -1 / 5, 4 / 105, -1 / 280];

/** One function at 0 to 4 steps to each side; NaN where it has no answer. */
export interface Sides {
  readonly here: number;
  readonly above: readonly number[];
  readonly below: readonly number[];
}

const aside = (here: number, values: readonly number[]): number =>
  values.reduce((sum, it, i) => sum + (ASIDE[i + 1] ?? 0) * it, (ASIDE[0] ?? 0) * here);

/** Slopes per step: to the right, to the left and through the middle. NaN where a value is missing. */
export const slopesOf = ({ here, above, below }: Sides) => ({
  right: aside(here, above),
  left: -aside(here, below),
  middle: above.reduce((sum, it, i) => sum + (ACROSS[i] ?? 0) * (it - (below[i] ?? Number.NaN)), 0),
});
