import { normalQuantile } from '../../calc/uncertainty/normal.ts';
import { sobolPoints } from '../../calc/uncertainty/sobol.ts';
import type { Progress } from '../study.ts';
import { nearestFailing } from './nearest-failing.ts';
import type { ScoredRoom } from './rooms-at.ts';

/** The likeliest way, or one of several, in which a limit comes to fail. */
export interface DesignPoint {
  /** Scores of the varied factors there. */
  readonly scores: readonly number[];
  /** Distance from the readings as they are, in deviations. */
  readonly distance: number;
  /** The room is 0 there and the shortest way leads straight to it; false where the search only came near. */
  readonly settled: boolean;
  /** The room there, as a part of the room at the readings. */
  readonly off: number;
}

const MOST_STEPS = 60;
/** Step of the differences that slopes are worked out from. */
const STEP = 1e-3;
const SETTLED = 1e-9;
/** Points with a greater distance have no chance worth a figure. */
const FURTHEST = 7.5;
/** Parts of the room at the readings within which a search that did not settle came near enough, or close. */
const NEAR = 0.05;
const CLOSE = 1e-4;
/** Starts looked for among points spread this much wider than the errors. */
const WIDER = 2.5;
const SPREAD = 512;
const MOST_STARTS = 10;
/** Starts, and points found, nearer to one another than this are one. */
const APART = 0.3;
/** A failing point this part of the way to a design point's plane, or beyond it, is taken to belong to it. */
const BEYOND = 0.95;
/** Most failing points without a design point of theirs from which one is looked for by trying. */
const MOST_TRIED = 4;

const dot = (a: readonly number[], b: readonly number[]): number =>
  a.reduce((sum, it, i) => sum + it * (b[i] ?? 0), 0);
const size = (a: readonly number[]): number => Math.sqrt(dot(a, a));
const plus = (a: readonly number[], b: readonly number[], times: number): number[] =>
  a.map((it, i) => it + times * (b[i] ?? 0));

/** Room and its slopes, by differences exact to the fourth degree. */
function* slopesAt(room: ScoredRoom, z: readonly number[]) {
  const offsets = [1, -1, 2, -2];
  const points = [z, ...z.flatMap((it, i) => offsets.map((k) => z.with(i, it + k * STEP)))];
  const { room: r } = yield* room.at(points);
  const slope = z.map((_, i) => {
    const [a, b, c, d] = offsets.map((_, k) => r[1 + 4 * i + k] ?? Number.NaN);
    return (8 * ((a ?? 0) - (b ?? 0)) - ((c ?? 0) - (d ?? 0))) / (12 * STEP);
  });
  return { here: r[0] ?? Number.NaN, slope };
}

/**
 * From a start to the nearest point of no room: steps of R. Rackwitz and B. Fiessler (1978) under the merit function
 * of Y. Zhang and A. Der Kiureghian (1995), which keeps them from running round in a ring.
 */
function* follow(
  room: ScoredRoom,
  start: readonly number[],
  scale: number,
): Generator<Progress, DesignPoint | undefined, void> {
  let z = [...start];
  for (let step = 0; step < MOST_STEPS; step++) {
    const { here, slope } = yield* slopesAt(room, z);
    const steep = size(slope);
    if (!Number.isFinite(here) || !(steep > 0) || !Number.isFinite(steep)) return undefined;
    const target = slope.map((it) => (it * (dot(slope, z) - here)) / steep ** 2);
    const way = plus(target, z, -1);
    if (Math.abs(here) <= SETTLED * scale && size(way) <= 1e-7 * Math.max(1, size(z))) {
      return { scores: z, distance: size(z), settled: true, off: 0 };
    }
    const weight = (2 * Math.max(size(z), size(target), 1)) / steep;
    const merit = (at: readonly number[], r: number): number => 0.5 * dot(at, at) + weight * Math.abs(r);
    const parts = Array.from({ length: 10 }, (_, k) => 0.5 ** k);
    const tried = parts.map((it) => plus(z, way, it));
    const { room: rooms } = yield* room.at(tried);
    const now = merit(z, here);
    const better = tried.findIndex((it, k) => merit(it, rooms[k] ?? Number.NaN) < now);
    const next = tried[better];
    if (next === undefined) {
      // No step makes it better any more: near a kink this is as close as it comes.
      const isThere = Math.abs(here) <= 1e-7 * scale && size(way) < 1e-4;
      return { scores: z, distance: size(z), settled: isThere, off: Math.abs(here) / scale };
    }
    z = next;
  }
  const { room: last } = yield* room.at([z]);
  return { scores: z, distance: size(z), settled: false, off: Math.abs(last[0] ?? Number.NaN) / scale };
}

interface Spread {
  readonly points: readonly (readonly number[])[];
  readonly rooms: readonly number[];
  readonly fails: readonly boolean[];
}

function* spread(room: ScoredRoom, seed: number): Generator<Progress, Spread, void> {
  const cube = sobolPoints(room.factors.length, SPREAD, seed);
  const points = Array.from({ length: SPREAD }, (_, n) =>
    cube.map((column) => WIDER * normalQuantile(column[n] ?? 0.5)),
  );
  const { room: rooms, fails } = yield* room.at(points);
  return { points, rooms, fails };
}

/** Points of little room in different directions, the least room first. */
function starts({ points, rooms }: Spread, dimensions: number): number[][] {
  const byRoom = points
    .map((z, n) => ({ z, room: rooms[n] ?? Number.NaN }))
    .filter((it) => Number.isFinite(it.room))
    .sort((a, b) => a.room - b.room);
  const chosen: number[][] = [Array.from({ length: dimensions }, (_, i) => (i % 2 === 0 ? 0.013 : -0.007))];
  for (const { z } of byRoom) {
    if (chosen.length >= MOST_STARTS) break;
    const isNew = chosen.every((it, i) => i === 0 || dot(it, z) < 0.7 * size(it) * size(z));
    // A start far out is brought in: what matters is its direction.
    if (isNew) chosen.push(z.map((it) => it * Math.min(1, 3 / size(z))));
  }
  return chosen;
}

/** Whether a point lies where the bound about one of the design points would have it fail. */
const belongs = (z: readonly number[], points: readonly DesignPoint[]): boolean =>
  points.some(({ scores, distance }) => dot(z, scores) >= BEYOND * distance ** 2);

/** Design points of the failing points that belong to none of those found. */
function* triedPoints(
  room: ScoredRoom,
  { points, fails }: Spread,
  found: readonly DesignPoint[],
  seed: number,
): Generator<Progress, readonly DesignPoint[], void> {
  const failing = points.filter((_, n) => fails[n] === true).sort((a, b) => size(a) - size(b));
  const all = [...found];
  for (let tried = 0; tried < MOST_TRIED; tried++) {
    const from = failing.find((it) => !belongs(it, all));
    if (from === undefined) break;
    const scores = yield* nearestFailing(room, from, seed + tried);
    const distance = size(scores);
    // What leads to a point already known belongs to it after all.
    failing.splice(failing.indexOf(from), 1);
    if (distance > FURTHEST || belongs(scores, all)) continue;
    all.push({ scores, distance, settled: false, off: 0 });
  }
  return all;
}

/** Every design point found for one limit that holds at the readings, the nearest first. */
export function* designPoints(
  room: ScoredRoom,
  seed: number,
): Generator<Progress, readonly DesignPoint[], void> {
  if (room.factors.length === 0) return [];
  const middle = yield* room.at([room.factors.map(() => 0)]);
  const scale = Math.abs(middle.room[0] ?? 1) || 1;
  const found: DesignPoint[] = [];
  const about = yield* spread(room, seed);
  for (const start of starts(about, room.factors.length)) {
    const point = yield* follow(room, start, scale);
    if (point === undefined || point.distance > FURTHEST || !(point.off <= NEAR)) continue;
    const same = found.findIndex((it) => size(plus(it.scores, point.scores, -1)) < APART);
    if (same === -1) found.push(point);
    else if (point.settled && !found[same]?.settled) found[same] = point;
  }
  // What only came near is kept for want of better alone.
  const settled = found.filter((it) => it.settled);
  const kept = settled.length > 0 ? found.filter((it) => it.settled || it.off <= CLOSE) : found;
  const all = yield* triedPoints(room, about, kept, seed);
  return all.toSorted((a, b) => a.distance - b.distance);
}
