import { sidesInUse } from '../feet.ts';
import type { Ground } from '../part.ts';
import { moved, point } from '../point.ts';
import type { Handle } from '../scene.ts';
import { number, type Values } from '../values.ts';
import { stackOf } from './stack.ts';

/** Where the choices seen from the side can be taken hold of. */
export function sideHandles(values: Values, ground: Ground): Handle[] {
  const { face, shaft } = ground;
  const handles: Handle[] = [];
  if (shaft !== null) {
    for (const name of ['upper_bracket_height', 'lower_bracket_height', 'shaft_foot_height'] as const) {
      const z = number(values, name);
      if (z !== null) handles.push({ name, at: shaft.at(z), moves: 'up and down' });
    }
  }
  for (const side of sidesInUse(values)) {
    const y = number(values, `${side}_foot_y`);
    const z = number(values, `${side}_foot_height`);
    const x = face === null || y === null || z === null ? null : face.x(z, y);
    if (x !== null && z !== null)
      handles.push({ name: `${side}_foot_height`, at: point(x, z), moves: 'up and down' });
  }
  const stack = stackOf(values, ground);
  if (stack !== null) {
    handles.push({
      name: 'shim_count',
      at: moved(stack.top, stack.up, -stack.halfLength),
      moves: 'fore and aft',
    });
  }
  return handles;
}
