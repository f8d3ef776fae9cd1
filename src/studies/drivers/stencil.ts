/** Weights of the values 0, 1, 2... steps away in the slope to one side, by how many steps are looked at. */
const ASIDE: Readonly<Record<number, readonly number[]>> = {
  2: [-3 / 2, 2, -1 / 2],
  4: [-25 / 12, 4, -3, 4 / 3, -1 / 4],
};
/** Weights of the differences across 1, 2... steps in the slope at the middle: exact to twice as many degrees. */
const ACROSS: Readonly<Record<number, readonly number[]>> = {
  2: [2 / 3, -1 / 12],
  4: [4 / 5, -1 / 5, 4 / 105, -1 / 280],
};

/** One function at the present value and at two or four steps to each side; NaN where it has no answer. */
export interface Sides {
  readonly here: number;
  readonly above: readonly number[];
  readonly below: readonly number[];
}

function aside(here: number, values: readonly number[]): number {
  const weights = ASIDE[values.length] ?? [];
  return values.reduce((sum, it, i) => sum + (weights[i + 1] ?? 0) * it, (weights[0] ?? 0) * here);
}

/** Slopes per step: to the right, to the left and through the middle. NaN where a value is missing. */
export function slopesOf({ here, above, below }: Sides) {
  const across = ACROSS[above.length] ?? [];
  return {
    right: aside(here, above),
    left: -aside(here, below),
    middle: above.reduce((sum, it, i) => sum + (across[i] ?? 0) * (it - (below[i] ?? Number.NaN)), 0),
  };
}
