import type { PairGiven } from '../../../src/calc/rudders/pair.ts';

/** Two rudders as the model words them, mm and degrees. */
export interface Rudders {
  readonly mainSwing: number;
  readonly vaneSwing: number;
  readonly chord: number;
  readonly balance: number;
  readonly vaneHead: number;
  readonly vaneFoot: number;
  readonly mainHead: number;
  readonly mainFoot: number;
  readonly overhang: number;
  readonly overhangFoot: number;
  readonly stockAhead: number;
  readonly shaftX: number;
  readonly lowerBracket: number;
  readonly lean: number;
  readonly offset: number;
}

/** The same as the library function takes them. */
export const argumentsOf = (it: Rudders): [number, number, number, number, ...PairGiven] => [
  it.mainSwing,
  it.vaneSwing,
  it.chord,
  it.balance,
  it.vaneHead,
  it.vaneFoot,
  it.mainHead,
  it.mainFoot,
  it.overhang,
  it.overhangFoot,
  it.stockAhead,
  it.shaftX,
  it.lowerBracket,
  it.lean,
  it.offset,
];

const RADIANS = Math.PI / 180;

const toSegment = (px: number, py: number, ax: number, ay: number, bx: number, by: number): number => {
  const [dx, dy] = [bx - ax, by - ay];
  const size = dx * dx + dy * dy;
  const t = size === 0 ? 0 : Math.min(1, Math.max(0, ((px - ax) * dx + (py - ay) * dy) / size));
  return Math.hypot(px - ax - t * dx, py - ay - t * dy);
};

const side = (px: number, py: number, ax: number, ay: number, bx: number, by: number): number =>
  (bx - ax) * (py - ay) - (by - ay) * (px - ax);

/** Distance of segment ab from segment cd in a plane. */
function betweenSegments(
  ax: number,
  ay: number,
  bx: number,
  by: number,
  cx: number,
  cy: number,
  dx: number,
  dy: number,
): number {
  if (
    side(ax, ay, cx, cy, dx, dy) * side(bx, by, cx, cy, dx, dy) < 0 &&
    side(cx, cy, ax, ay, bx, by) * side(dx, dy, ax, ay, bx, by) < 0
  ) {
    return 0;
  }
  return Math.min(
    toSegment(ax, ay, cx, cy, dx, dy),
    toSegment(bx, by, cx, cy, dx, dy),
    toSegment(cx, cy, ax, ay, bx, by),
    toSegment(dx, dy, ax, ay, bx, by),
  );
}

export const alongAt = (it: Rudders, z: number): number =>
  it.shaftX + (z - it.lowerBracket) * Math.tan(it.lean * RADIANS) + it.stockAhead;

export const reachAt = (it: Rudders, z: number): number =>
  it.overhang +
  ((it.mainHead - z) / (it.mainHead - it.mainFoot)) * (it.overhangFoot - it.overhang) +
  it.stockAhead;

export const sharedHeights = (it: Rudders): readonly [number, number] => [
  Math.max(it.vaneFoot, it.mainFoot),
  Math.min(it.vaneHead, it.mainHead),
];

/** Whether the line of centres lies within both swings at a height. */
export const facesAt = (it: Rudders, z: number): boolean =>
  Math.abs(Math.atan2(it.offset, alongAt(it, z))) <= Math.min(it.mainSwing, it.vaneSwing) * RADIANS;

/** Distance of the axes less both reaches. */
export const closedAt = (it: Rudders, z: number): number =>
  Math.hypot(alongAt(it, z), it.offset) - reachAt(it, z) - it.balance;

/**
 * The distance of the two chord lines at one height with both rudders at one angle. Where the line of centres lies
 * within both swings the definition looks at the forward part alone, and below 0 at the closed form.
 */
function at(it: Rudders, z: number, main: number, vane: number): number {
  const faces = facesAt(it, z);
  if (faces) {
    const closed = closedAt(it, z);
    if (closed < 0) return closed;
  }
  const reach = reachAt(it, z);
  const [x, y] = [alongAt(it, z), it.offset];
  const [cm, sm, cv, sv] = [Math.cos(main), Math.sin(main), Math.cos(vane), Math.sin(vane)];
  const after = faces ? 0 : it.chord - it.balance;
  return betweenSegments(
    0,
    0,
    reach * cm,
    reach * sm,
    x - it.balance * cv,
    y - it.balance * sv,
    x + after * cv,
    y + after * sv,
  );
}

export interface Reference {
  /** Least over a dense lattice of heights and angles, mm. */
  readonly coarse: number;
  /** How far above the true least a lattice so dense may be, mm. */
  readonly bound: number;
  /** Least after refining round the best lattice points, mm. */
  readonly fine: number;
}

/** Lattice points from one end to the other. */
const spaced = (from: number, to: number, count: number): number[] =>
  from === to ? [from] : Array.from({ length: count }, (_, i) => from + ((to - from) * i) / (count - 1));

/** The height at which the line of centres comes into or leaves a swing, by halving. */
function turningHeight(it: Rudders, from: number, to: number): number[] {
  if (facesAt(it, from) === facesAt(it, to)) return [];
  let [a, b] = [from, to];
  for (let step = 0; step < 60; step++) {
    const middle = (a + b) / 2;
    if (facesAt(it, middle) === facesAt(it, from)) a = middle;
    else b = middle;
  }
  return [a, b];
}

/** Closest approach by brute force: every height with every pair of angles, then ever smaller steps round the best. */
export function swungReference(it: Rudders, heights = 13, angles = 25): Reference {
  const [from, to] = sharedHeights(it);
  const zs = [...spaced(from, to, heights), ...turningHeight(it, from, to)];
  const [mainEnd, vaneEnd] = [it.mainSwing * RADIANS, it.vaneSwing * RADIANS];
  const mains = spaced(-mainEnd, mainEnd, angles);
  const vanes = spaced(-vaneEnd, vaneEnd, angles);
  const points: { z: number; main: number; vane: number; value: number }[] = [];
  for (const z of zs) {
    let best = { z, main: 0, vane: 0, value: Number.POSITIVE_INFINITY };
    for (const main of mains) {
      for (const vane of vanes) {
        const value = at(it, z, main, vane);
        if (value < best.value) best = { z, main, vane, value };
      }
    }
    points.push(best);
  }
  points.sort((a, b) => a.value - b.value);
  const coarse = points[0]?.value ?? Number.NaN;

  const step = { z: (to - from) / (heights - 1), main: (2 * mainEnd) / (angles - 1), vane: (2 * vaneEnd) / (angles - 1) };
  const reach = Math.max(reachAt(it, from), reachAt(it, to));
  const [slope, rake] = [
    Math.abs(Math.tan(it.lean * RADIANS)),
    Math.abs((it.overhang - it.overhangFoot) / (it.mainHead - it.mainFoot)),
  ];
  // No point of a chord moves faster than its end: half a step of each coordinate is the most a lattice can miss by.
  const bound =
    0.5 * (step.main * reach + step.vane * Math.max(it.balance, it.chord - it.balance) + step.z * (slope + rake)) + 1e-9;

  let fine = coarse;
  for (const start of points.slice(0, 3)) {
    let { z, main, vane, value } = start;
    let size = 1;
    let moves = 0;
    while (size > 1e-7) {
      let moved = false;
      for (const dz of [0, -1, 1]) {
        for (const dm of [0, -1, 1]) {
          for (const dv of [0, -1, 1]) {
            const next = {
              z: Math.min(to, Math.max(from, z + dz * size * step.z)),
              main: Math.min(mainEnd, Math.max(-mainEnd, main + dm * size * step.main)),
              vane: Math.min(vaneEnd, Math.max(-vaneEnd, vane + dv * size * step.vane)),
            };
            const there = at(it, next.z, next.main, next.vane);
            if (there < value - 1e-12) {
              ({ z, main, vane } = next);
              value = there;
              moved = true;
            }
          }
        }
      }
      // A narrow valley could be followed for ever in steps of one size.
      moves = moved ? moves + 1 : 0;
      if (!moved || moves > 20) {
        size /= 2;
        moves = 0;
      }
    }
    fine = Math.min(fine, value);
  }
  return { coarse, bound, fine };
}
