import type { PointEvaluator } from '../points.ts';
import type { Progress } from '../study.ts';
import type { MapAxis } from './axis.ts';
import { leastOf } from './depth.ts';

/** The spot with the most room. */
export interface Widest {
  readonly x: number;
  readonly y: number;
  /** The least room over all limits there, as a room ratio. */
  readonly room: number;
  /** The limit that has it; undefined where no limit has a room. */
  readonly limit: string | undefined;
}

interface Grid {
  readonly x: MapAxis;
  readonly y: MapAxis;
  readonly xs: Float64Array;
  readonly ys: Float64Array;
  readonly least: Float32Array;
}

/** Peaks of the grid that are looked into. */
const PEAKS = 6;
/** Places along each side of the square looked at round a peak, and what it shrinks by each time. */
const SIDE = 7;
const SHRINK = 0.6;
const ROUNDS = 24;

interface Peak {
  readonly i: number;
  readonly j: number;
  readonly room: number;
}

/** Grid points with no neighbour that has more room, those with the most first. */
function peaksOf({ xs, ys, least }: Grid): Peak[] {
  const at = (i: number, j: number): number => {
    const isThere = i >= 0 && j >= 0 && i < xs.length && j < ys.length;
    const value = isThere ? (least[j * xs.length + i] as number) : Number.NaN;
    return Number.isNaN(value) ? Number.NEGATIVE_INFINITY : value;
  };
  const peaks: Peak[] = [];
  for (let j = 0; j < ys.length; j++) {
    for (let i = 0; i < xs.length; i++) {
      const room = at(i, j);
      const around = Math.max(
        ...[-1, 0, 1].flatMap((k) => [-1, 0, 1].map((l) => (k === 0 && l === 0 ? room : at(i + k, j + l)))),
      );
      if (room > Number.NEGATIVE_INFINITY && room >= around) peaks.push({ i, j, room });
    }
  }
  return peaks.sort((a, b) => b.room - a.room).slice(0, PEAKS);
}

/** Places round a middle, half a side to each, inside the range; a whole number stays where it is. */
function around(middle: number, half: number, { low, high, whole, present }: MapAxis): number[] {
  if (whole) return [middle];
  const [from, to] = [Math.min(low, present ?? low), Math.max(high, present ?? high)];
  return Array.from({ length: SIDE }, (_, n) =>
    Math.min(to, Math.max(from, middle + (half * (2 * n - SIDE + 1)) / (SIDE - 1))),
  );
}

/** The places next to one that can be set in practice. */
function settled(value: number, { grain, whole, low, high }: MapAxis): number[] {
  if (whole) return [value];
  const middle = Math.round(value / grain);
  return [-1, 0, 1]
    .map((by) => Number(((middle + by) * grain).toPrecision(12)))
    .filter((it) => it >= low && it <= high);
}

/** The best of every pair of places: the first of those with the most room. */
function bestOf(evaluator: PointEvaluator, xs: readonly number[], ys: readonly number[]): Widest | undefined {
  const count = xs.length * ys.length;
  const columns = [
    Float64Array.from({ length: count }, (_, n) => xs[n % xs.length] as number),
    Float64Array.from({ length: count }, (_, n) => ys[Math.floor(n / xs.length)] as number),
  ] as const;
  const points = evaluator.evaluateMany(columns, count);
  let best: Widest | undefined;
  for (let n = 0; n < count; n++) {
    if (points.refused[n] === 1) continue;
    let [room, at] = [Number.POSITIVE_INFINITY, -1];
    points.limits.forEach(({ state, ratio }, k) => {
      const least = leastOf(state[n] as number, ratio[n] as number);
      if (least < room) [room, at] = [least, k];
    });
    if (best !== undefined && room <= best.room) continue;
    best = { x: columns[0][n] as number, y: columns[1][n] as number, room, limit: evaluator.limits[at] };
  }
  return best;
}

const better = (a: Widest | undefined, b: Widest | undefined): Widest | undefined =>
  b !== undefined && (a === undefined || b.room > a.room) ? b : a;

/**
 * The spot with the most room, found between the grid's points too: round each of its highest peaks ever smaller
 * squares are looked at. It is given to what the inputs are set to in practice.
 */
export function* widestSpot(
  evaluator: PointEvaluator,
  grid: Grid,
): Generator<Progress, Widest | undefined, void> {
  const { x, y, xs, ys } = grid;
  const of = xs.length * ys.length;
  const gap = (values: Float64Array): number =>
    ((values.at(-1) as number) - (values[0] as number)) / values.length;
  let widest: Widest | undefined;
  for (const { i, j } of peaksOf(grid)) {
    let best = bestOf(evaluator, [xs[i] as number], [ys[j] as number]);
    let [halfX, halfY] = [gap(xs) * 1.5, gap(ys) * 1.5];
    for (let round = 0; round < ROUNDS && best !== undefined && !(x.whole && y.whole); round++) {
      best = better(best, bestOf(evaluator, around(best.x, halfX, x), around(best.y, halfY, y)));
      [halfX, halfY] = [halfX * SHRINK, halfY * SHRINK];
      yield { done: of, of };
      // Nothing that can be set in practice lies so near.
      if ((x.whole || halfX < x.grain / 4) && (y.whole || halfY < y.grain / 4)) break;
    }
    if (best !== undefined)
      widest = better(widest, bestOf(evaluator, settled(best.x, x), settled(best.y, y)));
  }
  return widest;
}
