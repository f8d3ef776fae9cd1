import { type Part, shaftNeeds } from '../part.ts';
import { between, moved } from '../point.ts';
import { polygon, slab } from '../shapes.ts';
import { need } from '../values.ts';

/** Height of the bottom bearing as drawn, mm: only its lower face is measured. */
const BEARING = 26;

/** The tube with its bottom bearing, and the stock that comes out of it. */
export const tube: Part = {
  name: 'shaft_foot_height',
  needs: [
    ...shaftNeeds,
    'shaft_foot_height',
    'shaft_length',
    'tube_od',
    'stock_diameter',
    'vane_rudder_drop',
  ],
  draw(values, { shaft }) {
    const got = need(
      values,
      'shaft_foot_height',
      'shaft_length',
      'tube_od',
      'stock_diameter',
      'vane_rudder_drop',
    );
    if (got === null || shaft === null) return [];
    const [foot, length, od, stock, drop] = got;
    const low = shaft.at(foot);
    const high = moved(low, shaft.up, length);
    const head = moved(low, shaft.up, -drop);
    const { up, aft } = shaft;
    return [
      polygon('outline', slab(between(low, head), up, Math.abs(drop) / 2, aft, stock / 2), this.name),
      polygon('outline', slab(between(low, high), up, length / 2, aft, od / 2), this.name),
      polygon('fastener', slab(moved(low, up, BEARING / 2), up, BEARING / 2, aft, od / 2 + 4), this.name),
    ];
  },
};
