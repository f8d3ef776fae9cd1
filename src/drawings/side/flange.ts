import type { Ground } from '../part.ts';
import { type Point, point } from '../point.ts';
import { need, type Values } from '../values.ts';
import { stackOf } from './stack.ts';

/** The lower flange's face towards the transom. */
export interface Flange {
  readonly middle: Point;
  readonly up: Point;
  readonly out: Point;
  readonly half: number;
}

/** A hinged flange lies on the stack; a fixed one stands parallel to the shaft, with a wedge under it. */
export function flangeOf(values: Values, ground: Ground): Flange | null {
  const stack = stackOf(values, ground);
  const got = need(values, 'wedge_middle');
  const hinged = values.flag('lower_flange_hinged');
  const { shaft } = ground;
  if (stack === null || got === null || shaft === null || hinged === null) return null;
  const middle = point(stack.top.x + got[0], stack.top.y);
  return hinged
    ? { middle, up: stack.up, out: stack.out, half: stack.halfLength }
    : { middle, up: shaft.up, out: shaft.aft, half: stack.halfLength };
}
