import { cos, sin } from '../calc/angle.ts';
import { axisX } from '../calc/shaft/axis-x.ts';
import type { Point } from './point.ts';
import { need, type Values } from './values.ts';

/** The shaft's axis in the plane of the side view. */
export interface Shaft {
  readonly lean: number;
  /** Cosine of the lean: height per length along the shaft. */
  readonly cos: number;
  /** Up along the shaft, and squarely aft from it. */
  readonly up: Point;
  readonly aft: Point;
  /** The axis at height z. */
  at(z: number): Point;
}

const STEEPEST = 80;

/** The axis, or null while it cannot be placed. */
export function shaftOf(values: Values): Shaft | null {
  const got = need(values, 'shaft_x', 'lower_bracket_height', 'shaft_lean');
  if (got === null || Math.abs(got[2]) > STEEPEST) return null;
  const [x, height, lean] = got;
  return {
    lean,
    cos: cos(lean),
    up: { x: sin(lean), y: cos(lean) },
    aft: { x: cos(lean), y: -sin(lean) },
    at: (z) => ({ x: axisX(z, x, height, lean), y: z }),
  };
}
