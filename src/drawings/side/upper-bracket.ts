import { type Part, shaftNeeds } from '../part.ts';
import { moved, point } from '../point.ts';
import { polygon } from '../shapes.ts';
import { need } from '../values.ts';
import { clamp, clampWall } from './clamp.ts';

/** Clamp of the upper bracket with the lug that carries the strut pins. */
export const upperBracket: Part = {
  name: 'upper_bracket_height',
  needs: [...shaftNeeds, 'upper_bracket_height', 'upper_clamp_depth', 'pin_forward', 'tube_od'],
  draw(values, { shaft }) {
    const got = need(values, 'upper_bracket_height', 'upper_clamp_depth', 'pin_forward', 'tube_od');
    if (got === null || shaft === null) return [];
    const [height, depth, forward, od] = got;
    const axis = shaft.at(height);
    const pin = point(axis.x - forward, height);
    const back = moved(axis, shaft.aft, -(od / 2 + clampWall(od)) * 0.9);
    const half = depth * 0.24;
    const lug = [
      moved(back, shaft.up, -half),
      moved(back, shaft.up, half),
      point(pin.x - half * 0.7, height + half * 0.7),
      point(pin.x - half * 0.7, height - half * 0.7),
    ];
    return [polygon('choice', lug, this.name), clamp(shaft, height, depth, od, this.name)];
  },
};
