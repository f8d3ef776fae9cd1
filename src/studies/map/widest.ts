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
  /** The least room over all limits but that one. */
  readonly second: Float32Array;
}

/** Peaks of the grid that are looked into. */
const PEAKS = 4;
/** Places along each side of the square looked at round a peak, and what it shrinks by each time. */
const SIDE = 5;
const SHRINK = 0.6;
const ROUNDS = 24;

/** Rooms closer than this are the same: the next limit's room then decides, so that a level ridge has a middle. */
const SAME = 1e-9;
/** The same where a grid holds them in less space. */
const SAME_IN_GRID = 1e-6;

interface Rooms {
  readonly room: number;
  readonly second: number;
}

const compare = (a: Rooms, b: Rooms, same: number): number =>
  a.room !== b.room && !(Math.abs(a.room - b.room) <= same)
    ? a.room - b.room
    : a.second === b.second
      ? 0
      : a.second - b.second;

interface Peak extends Rooms {
  readonly i: number;
  readonly j: number;
}

const NOWHERE: Rooms = { room: Number.NEGATIVE_INFINITY, second: Number.NEGATIVE_INFINITY };

/** Grid points with no neighbour that has more room, those with the most first. */
function peaksOf({ xs, ys, least, second }: Grid): Peak[] {
  const at = (i: number, j: number): Rooms => {
    const n = j * xs.length + i;
    const isThere = i >= 0 && j >= 0 && i < xs.length && j < ys.length && !Number.isNaN(least[n]);
    return isThere ? { room: least[n] as number, second: second[n] as number } : NOWHERE;
  };
  const peaks: Peak[] = [];
  for (let j = 0; j < ys.length; j++) {
    for (let i = 0; i < xs.length; i++) {
      const here = at(i, j);
      if (here.room === Number.NEGATIVE_INFINITY) continue;
      const isTopped = [-1, 0, 1].some((k) =>
        [-1, 0, 1].some((l) => compare(at(i + k, j + l), here, SAME_IN_GRID) > 0),
      );
      if (!isTopped) peaks.push({ i, j, ...here });
    }
  }
  return peaks.sort((a, b) => compare(b, a, SAME_IN_GRID)).slice(0, PEAKS);
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

interface Found extends Widest {
  readonly second: number;
}

/** The best of every pair of places: the first of those with the most room. */
function bestOf(evaluator: PointEvaluator, xs: readonly number[], ys: readonly number[]): Found | undefined {
  const count = xs.length * ys.length;
  const columns = [
    Float64Array.from({ length: count }, (_, n) => xs[n % xs.length] as number),
    Float64Array.from({ length: count }, (_, n) => ys[Math.floor(n / xs.length)] as number),
  ] as const;
  const points = evaluator.evaluateMany(columns, count);
  let best: Found | undefined;
  for (let n = 0; n < count; n++) {
    if (points.refused[n] === 1) continue;
    let [room, second, at] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, -1];
    points.limits.forEach(({ state, ratio }, k) => {
      const least = leastOf(state[n] as number, ratio[n] as number);
      if (least < room) [room, second, at] = [least, room, k];
      else if (least < second) second = least;
    });
    if (best !== undefined && compare({ room, second }, best, SAME) <= 0) continue;
    best = {
      x: columns[0][n] as number,
      y: columns[1][n] as number,
      room,
      second,
      limit: evaluator.limits[at],
    };
  }
  return best;
}

const better = (a: Found | undefined, b: Found | undefined): Found | undefined =>
  b !== undefined && (a === undefined || compare(b, a, SAME) > 0) ? b : a;

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
  let widest: Found | undefined;
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
  return widest && { x: widest.x, y: widest.y, room: widest.room, limit: widest.limit };
}
