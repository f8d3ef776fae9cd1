import { camber } from '../calc/transom/face-x.ts';
import { unit, type Vector } from '../calc/vector.ts';
import { type Face, slopeAt } from './face.ts';

/** Outward normal of the face at (y, z), length 1; null past the camber's end. */
export function faceNormal(face: Face, y: number, z: number): Vector | null {
  const { radius } = face;
  if (radius !== 0 && Math.abs(y) >= radius) return null;
  const sideways = radius === 0 ? 0 : y / (radius - camber(y, radius));
  return unit({ x: 1, y: sideways, z: -slopeAt(face, z) });
}

/** A foot's hinge pin: `standoff` off the face along its normal at (y, z); null where there is no face. */
export function footPin(face: Face, y: number, z: number, standoff: number): Vector | null {
  const x = face.x(z, y);
  const normal = faceNormal(face, y, z);
  if (x === null || normal === null) return null;
  return { x: x + normal.x * standoff, y: y + normal.y * standoff, z: z + normal.z * standoff };
}
