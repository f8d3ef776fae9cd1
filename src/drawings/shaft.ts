import { cos, sin, tan } from '../calc/angle.ts';
import { axisX } from '../calc/shaft/axis-x.ts';
import { uprightPart } from '../calc/shaft/upright-part.ts';
import type { Point } from './point.ts';
import { need, number, type Values } from './values.ts';

/** The shaft's axis in the plane of the side view. */
export interface Shaft {
  readonly lean: number;
  /** Height per length along the shaft. */
  readonly upright: number;
  /** What a length along the shaft spans, which is less than 1 where it leans to the side; and squarely aft from it. */
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
  const upright = uprightPart(lean, number(values, 'shaft_side_lean') ?? 0);
  return {
    lean,
    upright,
    up: { x: upright * tan(lean), y: upright },
    aft: { x: cos(lean), y: -sin(lean) },
    at: (z) => ({ x: axisX(z, x, height, lean), y: z }),
  };
}
