import { type Part, shaftNeeds } from '../part.ts';
import { moved } from '../point.ts';
import { polyline } from '../shapes.ts';
import { need } from '../values.ts';

/** How far a dash-dot axis runs past the part it belongs to, mm. */
const PAST = 45;

/** The shaft's axis, from below the auxiliary rudder to above the tube. */
export const shaftAxis: Part = {
  name: 'shaft_foot_height',
  needs: [...shaftNeeds, 'shaft_foot_height', 'shaft_length', 'vane_rudder_drop', 'vane_rudder_span'],
  draw(values, { shaft }) {
    const got = need(values, 'shaft_foot_height', 'shaft_length', 'vane_rudder_drop', 'vane_rudder_span');
    if (got === null || shaft === null) return [];
    const [foot, length, drop, span] = got;
    const at = shaft.at(foot);
    return [
      polyline(
        'axis',
        [moved(at, shaft.up, -drop - span - PAST), moved(at, shaft.up, length + PAST)],
        this.name,
      ),
    ];
  },
};
