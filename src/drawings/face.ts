import { faceX } from '../calc/transom/face-x.ts';
import { profileSlope } from '../calc/transom/profile.ts';
import type { Point } from './point.ts';
import { need, number, type Values } from './values.ts';

export type MeasuredProfile = readonly (readonly [number, number])[];

/** The transom's outer face as the drawings need it. */
export interface Face {
  readonly rake: number;
  readonly radius: number;
  readonly profile: MeasuredProfile;
  /** y at which the side view cuts it, mm. */
  readonly offset: number;
  /** x of the face at height z, mm; at the shaft's own y unless another is given; null past the camber's end. */
  x(z: number, y?: number): number | null;
  /** Up along the face and squarely aft from it, in the plane of the side view. */
  up(z: number): Point;
  out(z: number): Point;
}

/** A face lying flatter than this is no transom, and its lengths along the rake would run away. */
const STEEPEST = 85;

/** The face, or null while the readings it rests on are missing. */
export function faceOf(values: Values, profile: MeasuredProfile = []): Face | null {
  const got = need(values, 'transom_rake', 'transom_camber_radius');
  if (got === null || Math.abs(got[0]) > STEEPEST || got[1] < 0) return null;
  const [rake, radius] = got;
  const shaft = number(values, 'shaft_offset');
  if (shaft === null && radius !== 0) return null;
  const offset = shaft ?? 0;
  const slope = (z: number): Point => {
    const t = profileSlope(z, rake, profile);
    const size = Math.hypot(1, t);
    return { x: t / size, y: 1 / size };
  };
  return {
    rake,
    radius,
    profile,
    offset,
    x: (z, y = offset) => {
      const x = faceX(y, z, rake, radius, profile);
      return typeof x === 'number' && Number.isFinite(x) ? x : null;
    },
    up: slope,
    out: (z) => {
      const up = slope(z);
      return { x: up.y, y: -up.x };
    },
  };
}
