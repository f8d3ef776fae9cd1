import { asideAt } from '../aside.ts';
import { type Part, shaftNeeds } from '../part.ts';
import { point } from '../point.ts';
import { circle, polygon, polyline } from '../shapes.ts';
import { clampWall } from '../side/clamp.ts';
import { need, number } from '../values.ts';
import { seen } from './sheet.ts';

/** The upper clamp with the lug that carries the strut pins, and the tube cut through. */
export const clampFromAbove: Part = {
  name: 'upper_bracket_height',
  needs: [
    ...shaftNeeds,
    'upper_bracket_height',
    'shaft_offset',
    'tube_od',
    'pin_forward',
    'pin_half_width',
    'strut_count',
  ],
  draw(values, { shaft }) {
    const got = need(
      values,
      'upper_bracket_height',
      'shaft_offset',
      'tube_od',
      'pin_forward',
      'pin_half_width',
      'strut_count',
    );
    if (got === null || shaft === null) return [];
    const offset = asideAt(values, got[0]);
    if (offset === null) return [];
    const [height, , od, forward, half, count] = got;
    const at = seen(shaft.at(height).x, offset);
    const outer = od / 2 + clampWall(od);
    const wide = (count === 2 ? half : 0) + 16;
    const wall = number(values, 'tube_wall') ?? 0;
    const front = at.x - forward - 12;
    return [
      polygon(
        'choice',
        [
          point(at.x, at.y - outer * 0.8),
          point(front, at.y - wide),
          point(front, at.y + wide),
          point(at.x, at.y + outer * 0.8),
        ],
        this.name,
      ),
      circle('choice', at, outer, this.name),
      circle('outline', at, od / 2, 'shaft_foot_height'),
      ...(wall > 0 && wall < od / 2 ? [circle('fastener', at, od / 2 - wall, 'shaft_foot_height')] : []),
      polyline('axis', [point(at.x - outer - 20, at.y), point(at.x + outer + 20, at.y)]),
      polyline('axis', [point(at.x, at.y - outer - 20), point(at.x, at.y + outer + 20)]),
    ];
  },
};
