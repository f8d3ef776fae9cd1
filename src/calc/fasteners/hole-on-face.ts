import { tan } from '../angle.ts';
import { NoAnswer } from '../answer.ts';
import { type Profile, profileSlope, profileX } from '../transom/profile.ts';

/** A flat flange whose middle lies against the transom, mm and degrees. */
export interface FlangePlace {
  readonly y: number;
  readonly z: number;
  readonly rake: number;
  readonly radius: number;
  readonly profile?: Profile;
}

/** Where a hole comes out of the transom's outer face, mm. */
export interface HoleOnFace {
  /** From the centreline to starboard: straight across, and with a tape laid level along the face. */
  readonly y: number;
  readonly along: number;
  /** From the waterline: plumb, and with a tape laid up the face. */
  readonly z: number;
  readonly up: number;
}

/** Length of the face's centreline from the waterline up to height z, mm; negative below. */
export function upTheFace(z: number, rake: number, profile: Profile = []): number {
  if (profile.length < 2) return z * Math.hypot(1, tan(rake));
  const [low, high] = z < 0 ? [z, 0] : [0, z];
  const heights = [low, ...profile.map((row) => row[0] ?? 0).filter((it) => it > low && it < high), high];
  let sum = 0;
  for (let i = 1; i < heights.length; i++) {
    const [from = 0, to = 0] = [heights[i - 1], heights[i]];
    sum += Math.hypot(to - from, profileX(to, rake, profile) - profileX(from, rake, profile));
  }
  return z < 0 ? -sum : sum;
}

/**
 * A hole drilled square to a flat flange, `across` mm to starboard of the flange's middle and `raised` mm up it. The
 * flange touches the face at its middle, so on a cambered face the holes meet the hull a little further out than
 * the flange's own spacing. No answer where the drill would miss the face.
 */
export function holeOnFace(place: FlangePlace, across: number, raised: number): HoleOnFace | NoAnswer {
  const { y: middle, z: level, rake, radius, profile = [] } = place;
  if (radius !== 0 && Math.abs(middle) >= radius) {
    return new NoAnswer(`The transom curves away before ${Math.abs(middle)} mm from the centreline.`);
  }
  const slope = profile.length < 2 ? tan(rake) : profileSlope(level, rake, profile);
  const depth = radius === 0 ? 1 : Math.sqrt(radius * radius - middle * middle);
  const turn = radius === 0 ? 0 : middle / depth;
  const [wide, size] = [Math.hypot(1, turn), Math.hypot(1, turn, slope)];
  // The flange's own directions: level to starboard, and up it.
  const y = middle + across / wide + (raised * turn * slope) / (wide * size);
  const z = level + (raised * wide) / size;
  if (radius === 0) return { y, along: y, z, up: upTheFace(z, rake, profile) };
  const gone = (-turn * across) / wide + (slope * raised) / (wide * size) - slope * ((raised * wide) / size);
  // Along the drill, s mm inward: (near − back·s)² + (y − side·s)² = radius².
  const [back, side] = [(1 + slope * slope) / size, turn / size];
  const near = depth + gone;
  const [a, b, c] = [
    back * back + side * side,
    near * back + y * side,
    near * near + y * y - radius * radius,
  ];
  const root = b * b - a * c;
  if (root < 0) return new NoAnswer('A hole square to the flange would miss the curved transom.');
  const inward = c / (b + Math.sqrt(root));
  const [onY, onZ] = [y - side * inward, z + (slope / size) * inward];
  const along = radius * Math.asin(onY / radius);
  return { y: onY, along, z: onZ, up: upTheFace(onZ, rake, profile) };
}
