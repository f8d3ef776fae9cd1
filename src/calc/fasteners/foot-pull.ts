import { cross, dot, type Vector } from '../vector.ts';

/** Pull and shear on the worst bolt of a foot, N. */
export interface Pull {
  readonly tension: number;
  readonly shear: number;
}

/** A foot's flange: its bolts stand in two columns `spacing` apart, in rows over its height. */
export interface FootFlange {
  readonly count: number;
  /** Lever of all bolts together against a moment about the way up the face, or about its normal, mm. */
  readonly across: number;
  /** The same about the level line along the face, mm. */
  readonly upward: number;
}

/** What the upward lever is divided by when a foot has more than one row, since the rows' places are not known. */
const ROWS_UNKNOWN = 1.21;

export const footFlange = (count: number, spacing: number, height: number): FootFlange => ({
  count,
  across: 0.5 * count * spacing,
  upward: (0.5 * count * height) / (count > 2 ? ROWS_UNKNOWN : 1),
});

/** Directions on the face at a foot: out of it, level along it, and up along it; each of length 1. */
export interface FaceFrame {
  readonly normal: Vector;
  readonly level: Vector;
  readonly up: Vector;
}

export function frameOf(normal: Vector): FaceFrame {
  const flat = Math.sqrt(normal.x * normal.x + normal.y * normal.y);
  const level = { x: -normal.y / flat, y: normal.x / flat, z: 0 };
  return { normal, level, up: cross(normal, level) };
}

/** A hinged strut brings `force` N along itself to its pin, `standoff` mm off the face; its sign does not matter. */
export function strutPull(
  force: number,
  along: Vector,
  normal: Vector,
  standoff: number,
  { count, across, upward }: FootFlange,
): Pull {
  // The level and upward directions of `frameOf`, without making them: this runs for every point of a study.
  const flat = Math.sqrt(normal.x * normal.x + normal.y * normal.y);
  const out = normal.x * along.x + normal.y * along.y;
  const aside = force * Math.abs((normal.x * along.y - normal.y * along.x) / flat);
  const rises = force * Math.abs(flat * along.z - (normal.z * out) / flat);
  return {
    tension:
      (force * Math.abs(out + normal.z * along.z)) / count + standoff * (aside / across + rises / upward),
    shear: Math.sqrt(aside * aside + rises * rises) / count,
  };
}

/** Two forces that a foot clamped rigid holds at once, each in either sense: their places from the foot's centre, mm, and sizes, N. */
export type HeldForce = readonly [from: Vector, force: Vector];

export function rigidPull(
  forces: readonly [HeldForce, HeldForce],
  { normal, level, up }: FaceFrame,
  { count, across, upward }: FootFlange,
): Pull {
  let [square, aside, rises, turns, tips, twists] = [0, 0, 0, 0, 0, 0];
  for (const [from, force] of forces) {
    const moment = cross(from, force);
    square += Math.abs(dot(force, normal));
    aside += Math.abs(dot(force, level));
    rises += Math.abs(dot(force, up));
    turns += Math.abs(dot(moment, up));
    tips += Math.abs(dot(moment, level));
    twists += Math.abs(dot(moment, normal));
  }
  const along = rises / count + twists / across;
  return {
    tension: square / count + turns / across + tips / upward,
    shear: Math.sqrt((aside / count) ** 2 + along * along),
  };
}
