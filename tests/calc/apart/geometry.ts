/** Boat axes: x aft, y to starboard, z up. */
export type V = readonly [number, number, number];

export const sub = (a: V, b: V): V => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
export const add = (a: V, b: V): V => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
export const times = (a: V, k: number): V => [a[0] * k, a[1] * k, a[2] * k];
export const dot = (a: V, b: V): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
export const cross = (a: V, b: V): V => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
export const size = (a: V): number => Math.hypot(...a);
export const unit = (a: V): V => times(a, 1 / size(a));

export const rad = (degrees: number): number => (degrees / 180) * Math.PI;
export const deg = (radians: number): number => (radians / Math.PI) * 180;

type Matrix = readonly [V, V, V];
export const turned = (m: Matrix, a: V): V => [dot(m[0], a), dot(m[1], a), dot(m[2], a)];
/** Turns about the level axis athwart: what pointed up comes to point aft. */
export const aboutAthwart = (angle: number): Matrix => {
  const [c, s] = [Math.cos(rad(angle)), Math.sin(rad(angle))];
  return [
    [c, 0, s],
    [0, 1, 0],
    [-s, 0, c],
  ];
};
/** Turns about the fore-and-aft axis: what pointed up comes to point to starboard. */
export const aboutLength = (angle: number): Matrix => {
  const [c, s] = [Math.cos(rad(angle)), Math.sin(rad(angle))];
  return [
    [1, 0, 0],
    [0, c, s],
    [0, -s, c],
  ];
};

/** A shaft's direction, pointing up: where the plane that leans aft cuts the plane that leans to starboard. */
export function shaftDirection(lean: number, sideLean: number): V {
  const aftPlane: V = [Math.cos(rad(lean)), 0, -Math.sin(rad(lean))];
  const sidePlane: V = [0, Math.cos(rad(sideLean)), -Math.sin(rad(sideLean))];
  const along = unit(cross(aftPlane, sidePlane));
  return along[2] < 0 ? times(along, -1) : along;
}

/** Where a line through a point crosses a height. */
export const atHeight = (from: V, along: V, z: number): V =>
  add(from, times(along, (z - from[2]) / along[2]));

/** x of the transom's face: a circle's arc across, straight up, or a measured centreline in place of the straight. */
export function face(
  y: number,
  z: number,
  rake: number,
  radius: number,
  profile: readonly (readonly number[])[] = [],
): number {
  const across = radius === 0 ? 0 : radius * (1 - Math.cos(Math.asin(y / radius)));
  if (profile.length < 2) return (z * Math.sin(rad(rake))) / Math.cos(rad(rake)) - across;
  const above = profile.findIndex(([height = 0]) => height > z);
  const k = Math.min(Math.max(above < 0 ? profile.length - 1 : above, 1), profile.length - 1);
  const [z0 = 0, x0 = 0] = profile[k - 1] as readonly number[];
  const [z1 = 0, x1 = 0] = profile[k] as readonly number[];
  const share = (z - z0) / (z1 - z0);
  return x0 * (1 - share) + x1 * share - across;
}

/** The face's outward normal: its two tangents' cross product, by small steps up and across. */
export function normal(
  y: number,
  z: number,
  rake: number,
  radius: number,
  profile: readonly (readonly number[])[] = [],
): V {
  const step = 1e-3;
  const up =
    (face(y, z + step, rake, radius, profile) - face(y, z - step, rake, radius, profile)) / (2 * step);
  const aside =
    (face(y + step, z, rake, radius, profile) - face(y - step, z, rake, radius, profile)) / (2 * step);
  return unit(cross([aside, 1, 0], [up, 0, 1]));
}

/** Least of a function between two ends, by looking everywhere and then closer. */
export function least(f: (at: number) => number, from: number, to: number, looks = 400): number {
  let [low, high] = [from, to];
  let best = Math.min(f(from), f(to));
  for (let round = 0; round < 6; round++) {
    const step = (high - low) / looks;
    let at = low;
    for (let i = 0; i <= looks; i++) {
      const value = f(low + i * step);
      if (value <= best) [best, at] = [value, low + i * step];
    }
    if (round === 0 && at === low && f(from) > best) at = from;
    [low, high] = [Math.max(from, at - step), Math.min(to, at + step)];
  }
  return best;
}

/** Solves a small set of linear equations by elimination, the largest first. */
export function solve(rows: readonly (readonly number[])[], right: readonly number[]): number[] {
  const all = rows.map((row, i) => [...row, right[i] as number]);
  const n = all.length;
  for (let k = 0; k < n; k++) {
    const pivot = all
      .slice(k)
      .reduce(
        (best, row, i) =>
          Math.abs(row[k] as number) > Math.abs((all[best] as number[])[k] as number) ? k + i : best,
        k,
      );
    [all[k], all[pivot]] = [all[pivot] as number[], all[k] as number[]];
    const head = all[k] as number[];
    for (let i = 0; i < n; i++) {
      if (i === k) continue;
      const row = all[i] as number[];
      const share = (row[k] as number) / (head[k] as number);
      for (let j = k; j <= n; j++) row[j] = (row[j] as number) - share * (head[j] as number);
    }
  }
  return all.map((row, i) => (row[n] as number) / (row[i] as number));
}
