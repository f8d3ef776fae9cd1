import type { Ground } from '../part.ts';
import { moved, type Point } from '../point.ts';
import { need, type Values } from '../values.ts';

/** The shim stack in the side view: where it lies on the face and how far it stands off. */
export interface Stack {
  /** Middle of the stack's footprint on the face, and of its outer surface. */
  readonly foot: Point;
  readonly top: Point;
  /** Up along the face, squarely off it. */
  readonly up: Point;
  readonly out: Point;
  readonly thickness: number;
  readonly count: number;
  readonly halfLength: number;
}

/** The stack is centred on the bolts, which stand square to the face and pass the flange's middle. */
export function stackOf(values: Values, { face }: Ground): Stack | null {
  const got = need(values, 'shim_count', 'shim_thickness', 'lower_bracket_height', 'lower_flange_height');
  if (got === null || face === null) return null;
  const [count, each, height, flange] = got;
  const x = face.x(height);
  if (x === null || count < 0 || each < 0) return null;
  const thickness = count * each;
  const up = face.up(height);
  const out = face.out(height);
  const top = { x: x + thickness / up.y, y: height };
  return { foot: moved(top, out, -thickness), top, up, out, thickness, count, halfLength: flange / 2 };
}
