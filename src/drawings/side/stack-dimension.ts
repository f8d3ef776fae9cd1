import { resultDimension } from '../measured.ts';
import type { SceneOptions } from '../options.ts';
import type { Ground } from '../part.ts';
import { between, moved } from '../point.ts';
import type { Dimension } from '../scene.ts';
import type { Values } from '../values.ts';
import { stackOf } from './stack.ts';

/** Distance of the line below the stack's lower end, px. */
const BELOW = 12;

/** Thickness of the shim stack, square to the transom, measured under its lower end. */
export function stackDimension(values: Values, options: SceneOptions, ground: Ground): Dimension[] {
  const stack = stackOf(values, ground);
  if (stack === null || stack.thickness <= 0) return [];
  const from = moved(stack.foot, stack.up, -stack.halfLength);
  const to = moved(from, stack.out, stack.thickness);
  return resultDimension(values, options, {
    name: 'shim_stack',
    from,
    to,
    place: 'here',
    off: { towards: { x: -stack.up.x, y: -stack.up.y }, px: BELOW },
    // The ring keeps to the stack itself: just below it other clearances are lettered.
    close: { from, to, ring: moved(between(from, to), stack.up, stack.halfLength * 0.5) },
  });
}
