import { cos, sin } from '../../calc/angle.ts';
import type { CellName } from '../../plan/names.ts';
import { type Point, point } from '../point.ts';
import type { Outline } from '../scene.ts';
import { circle, polygon, polyline } from '../shapes.ts';
import type { Bench, Pictures } from './bench.ts';
import type { Picture } from './picture.ts';

const origin = point(0, 0);
const LONG = 300;

const turned = (degrees: number, size: number, across = 0): Point =>
  point(size * cos(degrees) - across * sin(degrees), size * sin(degrees) + across * cos(degrees));

/** A tube of the strut's own thickness from the origin in one direction. */
function bar(degrees: number, od: number): Outline {
  const half = od / 2;
  return polygon('choice', [
    turned(degrees, 0, -half),
    turned(degrees, LONG, -half),
    turned(degrees, LONG, half),
    turned(degrees, 0, half),
  ]);
}

const spread =
  (limit: CellName) =>
  ({ n }: Bench): Picture => {
    const half = Math.min(170, n(limit)) / 2;
    const od = n('strut_od');
    return {
      shapes: [
        bar(180 - half, od),
        bar(180 + half, od),
        circle('choice', origin, n('tube_od') * 0.72),
        circle('outline', origin, n('tube_od') / 2),
      ],
      measured: { kind: 'angle', at: origin, from: 180 - half, to: 180 + half, radius: LONG * 0.66 },
      wide: LONG * 2.5,
      about: point(-LONG * 0.42, 0),
    };
  };

/** Angles that are limits of the gear. */
export const anglePictures: Pictures = {
  spread_min: spread('spread_min'),
  spread_max: spread('spread_max'),
  strut_rise_max: ({ n }) => {
    const rise = Math.min(85, n('strut_rise_max'));
    return {
      shapes: [
        polyline('axis', [origin, point(LONG * 1.1, 0)]),
        bar(rise, n('strut_od')),
        circle('choice', origin, n('strut_od') * 0.2),
      ],
      measured: { kind: 'angle', at: origin, from: 0, to: rise, radius: LONG * 0.7 },
      wide: LONG * 1.9,
      about: point(LONG * 0.5, LONG * 0.25),
    };
  },
  flange_yaw_max: ({ n }) => {
    const yaw = Math.min(45, n('flange_yaw_max'));
    const half = n('lower_flange_width') / 2;
    return {
      shapes: [
        polyline('axis', [point(0, -half * 1.5), point(0, half * 1.6)]),
        polygon('choice', [
          turned(90 + yaw, -half),
          turned(90 + yaw, half),
          turned(90 + yaw, half, -12),
          turned(90 + yaw, -half, -12),
        ]),
      ],
      measured: { kind: 'angle', at: turned(90 + yaw, -half), from: 90, to: 90 + yaw, radius: half * 2.2 },
      wide: half * 5,
      about: point(0, half * 0.2),
    };
  },
};
