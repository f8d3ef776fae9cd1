import { faceNeeds, type Part, shaftNeeds } from '../part.ts';
import { moved, point } from '../point.ts';
import { polygon } from '../shapes.ts';
import { flangeOf } from './flange.ts';
import { stackOf } from './stack.ts';

/** The wedge between the shims, which follow the transom, and a flange that follows the shaft. */
export const wedge: Part = {
  name: 'wedge_edge',
  needs: [...faceNeeds, ...shaftNeeds, 'wedge_middle', 'shim_count', 'shim_thickness', 'lower_flange_height'],
  applies: (values) => values.flag('lower_flange_hinged') === false,
  draw(values, ground) {
    const stack = stackOf(values, ground);
    const flange = flangeOf(values, ground);
    if (stack === null || flange === null) return [];
    const high = moved(flange.middle, flange.up, flange.half);
    const low = moved(flange.middle, flange.up, -flange.half);
    const slope = stack.up.x / stack.up.y;
    const under = (y: number) => point(stack.top.x + (y - stack.top.y) * slope, y);
    return [polygon('choice', [under(low.y), low, high, under(high.y)], this.name)];
  },
};
