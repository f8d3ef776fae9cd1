import { contoursInRows, type Place } from './contours.ts';
import type { Mapped } from './map.ts';
import { type Nodes, nodesOf, stretchAt } from './nodes.ts';

/** Parts that the stretch between two values is cut into, so that an edge with a corner keeps it. */
const PARTS = 3;

/** Places of a side with the stretches between its values cut up; a whole number's nodes as they are. */
function cut({ at }: Nodes, whole: boolean): Float64Array {
  if (whole) return at;
  const count = (at.length - 1) * PARTS + 1;
  return Float64Array.from({ length: count }, (_, n) => {
    const [i, part] = [Math.floor(n / PARTS), n % PARTS];
    const [a, b] = [at[i] as number, at[i + 1] ?? (at[i] as number)];
    return a + ((b - a) * part) / PARTS;
  });
}

interface Cut {
  readonly at: Float64Array;
  readonly from: Int32Array;
  readonly to: Int32Array;
  readonly share: Float64Array;
}

function cutOf(nodes: Nodes, whole: boolean): Cut {
  const at = cut(nodes, whole);
  // A whole number's nodes stand two by two at one place, so each is itself rather than looked up by its place.
  if (whole) {
    const of = Int32Array.from(nodes.of);
    return { at, from: of, to: of, share: new Float64Array(of.length) };
  }
  const stretches = [...at].map((place) => stretchAt(nodes, place));
  return {
    at,
    from: Int32Array.from(stretches, (it) => nodes.of[it.from] as number),
    to: Int32Array.from(stretches, (it) => nodes.of[Math.min(it.from + 1, nodes.of.length - 1)] as number),
    share: Float64Array.from(stretches, (it) => it.share),
  };
}

/** Lowers a row of numbers to what a field comes to there; `low` and `high` are where the rows on either side begin. */
function lower(
  row: Float64Array,
  field: Float32Array,
  low: number,
  high: number,
  v: number,
  { from, to, share }: Cut,
): void {
  for (let i = 0; i < row.length; i++) {
    const [a, b, u] = [from[i] as number, to[i] as number, share[i] as number];
    const below = (field[low + a] as number) * (1 - u) + (field[low + b] as number) * u;
    const above = (field[high + a] as number) * (1 - u) + (field[high + b] as number) * u;
    row[i] = Math.min(row[i] as number, below * (1 - v) + above * v);
  }
}

/**
 * The lines between what every limit allows and what some limit or the inputs themselves forbid. It yields after every
 * row of cells.
 */
export function* edgesInRows({ xs, ys, ask, limits, refused }: Mapped): Generator<void, Place[][], void> {
  const [x, y] = [cutOf(nodesOf(xs, ask.x.whole), ask.x.whole), cutOf(nodesOf(ys, ask.y.whole), ask.y.whole)];
  const fields = limits.map((it) => it.depth);
  if (refused.includes(1)) fields.push(Float32Array.from(refused, (it) => 0.5 - it));
  const wide = x.at.length;
  const known = new Float64Array(wide * y.at.length).fill(1);
  for (let j = 0; j < y.at.length; j++) {
    const row = known.subarray(j * wide, (j + 1) * wide);
    const [low, high] = [(y.from[j] as number) * xs.length, (y.to[j] as number) * xs.length];
    for (const field of fields) lower(row, field, low, high, y.share[j] as number, x);
    yield;
  }
  return yield* contoursInRows({ xs: x.at, ys: y.at, at: (i, j) => known[j * wide + i] as number }, 0);
}

/** The lines along which a result of a map stands at a level. It yields after every row of cells. */
export function* levelLinesInRows(
  { xs, ys, ask, results }: Mapped,
  result: number,
  level: number,
): Generator<void, Place[][], void> {
  const [x, y] = [nodesOf(xs, ask.x.whole), nodesOf(ys, ask.y.whole)];
  const values = results[result];
  if (values === undefined) return [];
  const at = (i: number, j: number): number =>
    values[(y.of[j] as number) * xs.length + (x.of[i] as number)] as number;
  return yield* contoursInRows({ xs: x.at, ys: y.at, at }, level);
}
