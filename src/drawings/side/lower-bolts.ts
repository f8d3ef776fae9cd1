import { faceNeeds, type Part, shaftNeeds } from '../part.ts';

import { need } from '../values.ts';
import { throughBolt } from './bolt.ts';
import { stackOf } from './stack.ts';

/** The lower bracket's bolts: two side by side, so one is seen, square to the transom. */
export const lowerBolts: Part = {
  name: 'bolt_diameter',
  needs: [
    ...faceNeeds,
    ...shaftNeeds,
    'shim_count',
    'shim_thickness',
    'lower_flange_height',
    'wedge_middle',
    'flange_thickness',
    'transom_thickness',
    'bed_thickness',
    'plate_thickness',
    'plate_area',
    'bolt_diameter',
  ],
  draw(values, ground) {
    const stack = stackOf(values, ground);
    const got = need(
      values,
      'wedge_middle',
      'flange_thickness',
      'transom_thickness',
      'bed_thickness',
      'plate_thickness',
      'plate_area',
      'bolt_diameter',
    );
    if (stack === null || got === null || ground.shaft === null || got[5] < 0) return [];
    const [wedge, flange, thickness, bed, plate, area, diameter] = got;
    const { foot, up, out } = stack;
    return throughBolt({
      at: foot,
      up,
      out,
      diameter,
      outside: stack.thickness + wedge * up.y + flange,
      thickness,
      bed,
      plate,
      plateHalf: Math.sqrt(area) / 2,
      part: this.name,
    });
  },
};
