import { faceNormal as normalOf, footPin as pinOf } from '../calc/struts/foot-pin.ts';
import type { Vector } from '../calc/vector.ts';
import type { Face } from './face.ts';

const onFace = ({ radius }: Face, y: number): boolean => radius === 0 || Math.abs(y) < radius;

/** Outward normal of the face at (y, z), length 1; null past the camber's end. */
export const faceNormal = (face: Face, y: number, z: number): Vector | null =>
  onFace(face, y) ? normalOf(y, z, face.rake, face.radius, face.profile) : null;

/** A foot's hinge pin, `standoff` mm off the face; null where there is no face. */
export function footPin(face: Face, y: number, z: number, standoff: number): Vector | null {
  if (!onFace(face, y)) return null;
  const pin = pinOf(y, z, standoff, face.rake, face.radius, face.profile);
  return 'x' in pin ? pin : null;
}
