import type { Point } from '../point.ts';
import type { Outline } from '../scene.ts';
import { circle, polygon, polyline, slab } from '../shapes.ts';
import { number, type Values } from '../values.ts';

const across = { x: 1, y: 0 };
const up = { x: 0, y: 1 };
/** How far a hole's centre lines run past its edge, mm. */
const PAST = 8;

/** A through bolt from astern: its hole with centre lines, and the backing plate behind the transom. */
export function boltHole(values: Values, at: Point): Outline[] {
  const diameter = number(values, 'bolt_diameter');
  const area = number(values, 'plate_area');
  const shapes: Outline[] = [];
  if (area !== null && area > 0) {
    const half = Math.sqrt(area) / 2;
    shapes.push(polygon('hidden', slab(at, across, half, up, half), 'bolt_diameter'));
  }
  if (diameter === null || diameter <= 0) return shapes;
  const reach = diameter / 2 + PAST;
  shapes.push(
    circle('fastener', at, diameter / 2, 'bolt_diameter'),
    polyline('axis', [
      { x: at.x - reach, y: at.y },
      { x: at.x + reach, y: at.y },
    ]),
    polyline('axis', [
      { x: at.x, y: at.y - reach },
      { x: at.x, y: at.y + reach },
    ]),
  );
  return shapes;
}
