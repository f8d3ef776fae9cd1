import type { Part } from '../part.ts';
import { point } from '../point.ts';
import { breakLine, polygon, polyline } from '../shapes.ts';
import { need } from '../values.ts';

/** How far the blade is shown ahead of its axis, as a share of the chord behind it: its nose is not measured. */
const AHEAD = 0.14;

/** The boat's own rudder: the trailing edge that matters, its turning axis, and a broken-off front. */
export const ownRudder: Part = {
  name: 'rudder_overhang',
  needs: [
    'rudder_overhang',
    'rudder_overhang_foot',
    'main_rudder_head',
    'main_rudder_foot',
    'rudder_stock_ahead',
  ],
  draw(values) {
    const got = need(
      values,
      'rudder_overhang',
      'rudder_overhang_foot',
      'main_rudder_head',
      'main_rudder_foot',
      'rudder_stock_ahead',
    );
    if (got === null) return [];
    const [head, foot, top, bottom, ahead] = got;
    const chord = Math.max(head, foot) + ahead;
    const nose = Math.min(-ahead - Math.max(40, chord * AHEAD), head - 20, foot - 20);
    const aftHead = point(head, top);
    const aftFoot = point(foot, bottom);
    const foreHead = point(nose, top);
    const foreFoot = point(nose, bottom);
    return [
      polygon('soft-fill', [foreHead, aftHead, aftFoot, foreFoot], this.name),
      polyline('soft', [foreHead, aftHead, aftFoot, foreFoot], this.name),
      breakLine(foreFoot, foreHead, 16, this.name),
      polyline('axis', [point(-ahead, bottom - 50), point(-ahead, top + 120)], this.name),
    ];
  },
};
