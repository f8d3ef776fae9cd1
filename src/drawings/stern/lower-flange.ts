import type { Part } from '../part.ts';
import { point } from '../point.ts';
import { polygon, slab } from '../shapes.ts';
import { need } from '../values.ts';
import { boltHole } from './bolt-holes.ts';

/** The lower bracket's flange with its two bolts side by side. */
export const lowerFlange: Part = {
  name: 'lower_bracket_height',
  needs: [
    'shaft_offset',
    'lower_bracket_height',
    'lower_flange_width',
    'lower_flange_height',
    'lower_bolt_spacing',
  ],
  draw(values) {
    const got = need(
      values,
      'shaft_offset',
      'lower_bracket_height',
      'lower_flange_width',
      'lower_flange_height',
      'lower_bolt_spacing',
    );
    if (got === null) return [];
    const [y, z, width, height, spacing] = got;
    return [
      polygon('choice', slab(point(y, z), { x: 1, y: 0 }, width / 2, { x: 0, y: 1 }, height / 2), this.name),
      ...boltHole(values, point(y - spacing / 2, z)),
      ...boltHole(values, point(y + spacing / 2, z)),
    ];
  },
};
