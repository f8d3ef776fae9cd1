import { type Part, shaftNeeds } from '../part.ts';
import { type Point, point } from '../point.ts';
import { polygon } from '../shapes.ts';
import { need } from '../values.ts';

/** The auxiliary rudder: chord and balance stay horizontal, the span follows the shaft. */
export const auxiliaryRudder: Part = {
  name: 'vane_rudder_span',
  needs: [
    ...shaftNeeds,
    'shaft_foot_height',
    'vane_rudder_drop',
    'vane_rudder_span',
    'vane_rudder_chord',
    'vane_rudder_balance',
  ],
  draw(values, { shaft }) {
    const got = need(
      values,
      'shaft_foot_height',
      'vane_rudder_drop',
      'vane_rudder_span',
      'vane_rudder_chord',
      'vane_rudder_balance',
    );
    if (got === null || shaft === null) return [];
    const [foot, drop, span, chord, balance] = got;
    const head = foot - drop * shaft.upright;
    const edge = (z: number, from: number): Point => point(shaft.at(z).x + from, z);
    const low = head - span * shaft.upright;
    return [
      polygon(
        'outline',
        [edge(low, -balance), edge(head, -balance), edge(head, chord - balance), edge(low, chord - balance)],
        this.name,
      ),
    ];
  },
};
