import { faceNeeds, type Part, shaftNeeds } from '../part.ts';
import { moved } from '../point.ts';
import { circle, polygon } from '../shapes.ts';
import { need } from '../values.ts';
import { clamp, clampWall } from './clamp.ts';
import { flangeOf } from './flange.ts';

/** Flange, arm and clamp of the lower bracket. */
export const lowerBracket: Part = {
  name: 'lower_bracket_height',
  needs: [
    ...faceNeeds,
    ...shaftNeeds,
    'shim_count',
    'shim_thickness',
    'wedge_middle',
    'lower_flange_height',
    'flange_thickness',
    'lower_clamp_depth',
    'tube_od',
  ],
  draw(values, ground) {
    const flange = flangeOf(values, ground);
    const { shaft } = ground;
    const got = need(values, 'lower_bracket_height', 'flange_thickness', 'lower_clamp_depth', 'tube_od');
    if (flange === null || shaft === null || got === null) return [];
    const [height, thick, depth, od] = got;
    const { middle, up, out, half } = flange;
    const back = moved(middle, out, thick);
    const plate = [
      moved(middle, up, -half),
      moved(middle, up, half),
      moved(back, up, half),
      moved(back, up, -half),
    ];
    const wide = Math.min(half * 0.62, depth * 0.75);
    const narrow = depth * 0.34;
    const end = moved(shaft.at(height), shaft.aft, -(od / 2 + clampWall(od)));
    const arm = [
      moved(back, up, -wide),
      moved(back, up, wide),
      moved(end, shaft.up, narrow),
      moved(end, shaft.up, -narrow),
    ];
    const hinge = values.flag('lower_flange_hinged') === true;
    return [
      polygon('choice', arm, this.name),
      polygon('choice', plate, this.name),
      ...(hinge ? [circle('choice', moved(back, out, wide * 0.5), wide * 0.28, this.name)] : []),
      clamp(shaft, height, depth, od, this.name),
    ];
  },
};
