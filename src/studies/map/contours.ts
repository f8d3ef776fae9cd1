/** Numbers known at the crossings of two rising lists of places, row by row upwards; NaN where there is none. */
export interface Field {
  readonly xs: ArrayLike<number>;
  readonly ys: ArrayLike<number>;
  readonly at: (i: number, j: number) => number;
}

export interface Place {
  readonly x: number;
  readonly y: number;
}

/** The two sides of each cell that a line joins, by which corners stand above the level: right, top, left, bottom. */
const JOINED: readonly (readonly (readonly [number, number])[])[] = [
  [],
  [[2, 3]],
  [[3, 0]],
  [[2, 0]],
  [[0, 1]],
  [
    [2, 1],
    [3, 0],
  ],
  [[3, 1]],
  [[2, 1]],
  [[1, 2]],
  [[1, 3]],
  [
    [3, 2],
    [0, 1],
  ],
  [[1, 0]],
  [[0, 2]],
  [[0, 3]],
  [[3, 2]],
  [],
];

/** The table takes a saddle's middle to stand above the level; where it does not, its sides are joined the other way. */
const TURNED: Readonly<Record<number, number>> = { 5: 10, 10: 5 };

class Lines {
  readonly #places = new Map<number, Place>();
  readonly #next = new Map<number, number[]>();

  join(a: number, b: number, placeOf: (side: number) => Place): void {
    for (const [from, to] of [
      [a, b],
      [b, a],
    ] as const) {
      const known = this.#next.get(from);
      if (known === undefined) {
        this.#next.set(from, [to]);
        this.#places.set(from, placeOf(from));
      } else known.push(to);
    }
  }

  /** Every line once: those with two ends first, then those that close. */
  all(): Place[][] {
    const ends = [...this.#next].filter(([, next]) => next.length === 1).map(([side]) => side);
    const done = new Set<number>();
    const lines: Place[][] = [];
    for (const start of [...ends, ...this.#next.keys()]) {
      if (done.has(start)) continue;
      const line: Place[] = [];
      let side: number | undefined = start;
      while (side !== undefined && !done.has(side)) {
        done.add(side);
        line.push(this.#places.get(side) as Place);
        side = this.#next.get(side)?.find((it) => !done.has(it));
      }
      const last = line.length > 2 && this.#next.get(start)?.length === 2;
      lines.push(last ? [...line, line[0] as Place] : line);
    }
    return lines;
  }
}

/**
 * The lines along which a field stands at a level (marching squares). Between neighbouring places the field is taken to
 * run straight; a cell with a corner that has no number is left out. It yields after every row of cells.
 */
export function* contoursInRows({ xs, ys, at }: Field, level: number): Generator<void, Place[][], void> {
  const [nx, ny] = [xs.length, ys.length];
  const lines = new Lines();
  const across = (i: number, j: number): number => (j * nx + i) * 2;
  const placeOf = (side: number): Place => {
    const [i, j] = [(side >> 1) % nx, Math.floor((side >> 1) / nx)];
    const [k, l] = (side & 1) === 0 ? [i + 1, j] : [i, j + 1];
    const [a, b] = [at(i, j), at(k, l)];
    const share = (level - a) / (b - a);
    const [x, y] = [xs[i] as number, ys[j] as number];
    return { x: x + ((xs[k] as number) - x) * share, y: y + ((ys[l] as number) - y) * share };
  };
  for (let j = 0; j + 1 < ny; j++) {
    for (let i = 0; i + 1 < nx; i++) {
      const [a, b, c, d] = [at(i, j), at(i + 1, j), at(i + 1, j + 1), at(i, j + 1)];
      const sum = a + b + c + d;
      if (sum - sum !== 0) continue;
      const above =
        Number(a >= level) |
        (Number(b >= level) << 1) |
        (Number(c >= level) << 2) |
        (Number(d >= level) << 3);
      if (above === 0 || above === 15) continue;
      const isLow = sum / 4 < level;
      const kind = isLow ? (TURNED[above] ?? above) : above;
      const sides = [across(i + 1, j) + 1, across(i, j + 1), across(i, j) + 1, across(i, j)] as const;
      for (const [from, to] of JOINED[kind] ?? [])
        lines.join(sides[from] as number, sides[to] as number, placeOf);
    }
    yield;
  }
  return lines.all();
}
