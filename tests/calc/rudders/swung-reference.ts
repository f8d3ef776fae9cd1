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
  readonly sideLean: number;
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
  it.sideLean,
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

export const acrossAt = (it: Rudders, z: number): number =>
  it.offset + (z - it.lowerBracket) * Math.tan(it.sideLean * RADIANS);

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
  Math.abs(Math.atan2(acrossAt(it, z), alongAt(it, z))) <= Math.min(it.mainSwing, it.vaneSwing) * RADIANS;

/** Distance of the axes less both reaches. */
export const closedAt = (it: Rudders, z: number): number =>
  Math.hypot(alongAt(it, z), acrossAt(it, z)) - reachAt(it, z) - it.balance;

/** The distance of the two chord lines at one height, each at one angle; `after` is what the vane rudder has aft. */
function between(it: Rudders, z: number, main: number, vane: number, after: number): number {
  const reach = reachAt(it, z);
  const [x, y] = [alongAt(it, z), acrossAt(it, z)];
  const [cm, sm, cv, sv] = [Math.cos(main), Math.sin(main), Math.cos(vane), Math.sin(vane)];
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

/**
 * The same as the definition words it: where the line of centres lies within both swings the closed form stands for the
 * part ahead of the axis where it is below 0, as no pair of angles can show.
 */
function at(it: Rudders, z: number, main: number, vane: number): number {
  const closed = facesAt(it, z) ? closedAt(it, z) : 0;
  return closed < 0 ? closed : between(it, z, main, vane, it.chord - it.balance);
}

/** The closed form where it holds, so that refining does not have to find two ends that point at each other. */
const settled = (it: Rudders, z: number, main: number, vane: number): number =>
  facesAt(it, z) ? Math.min(closedAt(it, z), at(it, z, main, vane)) : at(it, z, main, vane);

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
  from === to
    ? [from]
    : Array.from({ length: count }, (_, i) =>
        i === count - 1 ? to : from + ((to - from) * i) / (count - 1),
      );

/** The main rudder's best angle: the best of evenly spaced ones, narrowed down between its neighbours. */
function narrowed(f: (angle: number) => number, end: number): { main: number; value: number } {
  let main = 0;
  let value = f(0);
  for (let i = -8; i <= 8; i++) {
    const tried = f((i * end) / 8);
    if (tried < value) [main, value] = [(i * end) / 8, tried];
  }
  for (let width = end / 8; width > 1e-8; width *= 0.6) {
    const middle = main;
    for (let i = -1; i <= 1; i += 2) {
      const angle = Math.min(end, Math.max(-end, middle + i * width));
      const tried = f(angle);
      if (tried < value) [main, value] = [angle, tried];
    }
  }
  return { main, value };
}

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
export function swungReference(it: Rudders, heights = 9, angles = 17): Reference {
  const [from, to] = sharedHeights(it);
  const zs = [...spaced(from, to, heights), ...turningHeight(it, from, to)];
  const [mainEnd, vaneEnd] = [it.mainSwing * RADIANS, it.vaneSwing * RADIANS];
  const mains = spaced(-mainEnd, mainEnd, angles);
  const vanes = spaced(-vaneEnd, vaneEnd, angles);
  let coarse = Number.POSITIVE_INFINITY;
  for (const z of zs) {
    for (const main of mains) {
      for (const vane of vanes) coarse = Math.min(coarse, at(it, z, main, vane));
    }
  }

  const step = {
    z: (to - from) / (heights - 1),
    main: (2 * mainEnd) / (angles - 1),
    vane: (2 * vaneEnd) / (angles - 1),
  };
  const reach = Math.max(reachAt(it, from), reachAt(it, to));
  const [slope, rake] = [
    Math.hypot(Math.tan(it.lean * RADIANS), Math.tan(it.sideLean * RADIANS)),
    Math.abs((it.overhang - it.overhangFoot) / (it.mainHead - it.mainFoot)),
  ];
  // No point of a chord moves faster than its end: half a step of each coordinate is the most a lattice can miss by.
  const bound =
    0.5 *
      (step.main * reach +
        step.vane * Math.max(it.balance, it.chord - it.balance) +
        step.z * (slope + rake)) +
    1e-9;

  // The two angles together make too narrow a valley for a lattice, so each height and angle of the vane rudder is
  // looked at with the main rudder's angle narrowed down.
  const best = (heights: readonly number[], angles: readonly number[]) => {
    let found = { z: from, vane: 0, value: Number.POSITIVE_INFINITY };
    for (const z of heights) {
      for (const vane of angles) {
        const { value } = narrowed((main) => settled(it, z, main, vane), mainEnd);
        if (value < found.value) found = { z, vane, value };
      }
    }
    return found;
  };
  let found = best(zs, vanes);
  const fineAt = (size: number) => {
    const { z, vane } = found;
    const held = (value: number, least: number, most: number) => Math.min(most, Math.max(least, value));
    return best(
      [-1, 0, 1].map((i) => held(z + i * size * step.z, from, to)),
      [-1, -0.5, 0, 0.5, 1].map((i) => held(vane + i * size * step.vane, -vaneEnd, vaneEnd)),
    );
  };
  for (let size = 1; size > 1e-5 && found.value > 0; size *= 0.6) {
    const next = fineAt(size);
    if (next.value < found.value) found = next;
  }
  const fine = Math.min(coarse, found.value);
  return { coarse, bound, fine };
}
