import { camber } from '../../calc/transom/face-x.ts';
import { type Point, point } from '../point.ts';
import { hatch, polygon, polyline } from '../shapes.ts';
import type { Bench } from './bench.ts';
import { length, type Picture } from './picture.ts';

const STEPS = 24;

/** The transom from above as part of a circle, with the radius from its centre. */
export function camberPicture({ n }: Bench): Picture {
  const half = n('transom_half_breadth');
  // A flat transom has no centre to measure from: the picture then only shows what would be measured.
  const radius = n('transom_camber_radius') > half ? n('transom_camber_radius') : half * 2.4;
  const thickness = radius * 0.02;
  const outer: Point[] = [];
  for (let i = 0; i <= STEPS; i++) {
    const y = -half + (2 * half * i) / STEPS;
    outer.push(point(-camber(y, radius), y));
  }
  const skin = [...outer, ...outer.toReversed().map((p) => point(p.x - thickness, p.y))];
  return {
    shapes: [
      polygon('cut', skin),
      hatch(skin),
      polyline('axis', [point(-radius - 60, 0), point(120, 0)]),
      polyline('axis', [point(-radius, -80), point(-radius, 80)]),
    ],
    measured: length(point(-radius, 0), point(0, 0)),
    wide: Math.max(radius * 1.35, half * 2.3 * 1.6),
    about: point(-radius / 2, 0),
  };
}
