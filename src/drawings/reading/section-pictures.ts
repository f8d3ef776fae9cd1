import type { CellName } from '../../plan/names.ts';
import { type Point, point } from '../point.ts';
import type { Outline } from '../scene.ts';
import { breakLine, circle, hatch, polygon, polyline } from '../shapes.ts';
import type { Bench, Pictures } from './bench.ts';
import { length, level, type Picture } from './picture.ts';

const origin = point(0, 0);
const box = (x0: number, x1: number, y0: number, y1: number): Point[] => [
  point(x0, y0),
  point(x1, y0),
  point(x1, y1),
  point(x0, y1),
];

const SIDES = 48;

/** The metal of a tube cut across: outer circle there, inner circle back. */
function ring(outer: number, inner: number): Point[] {
  const turn = (r: number, i: number): Point => {
    const angle = (2 * Math.PI * i) / SIDES;
    return point(r * Math.cos(angle), r * Math.sin(angle));
  };
  const steps = Array.from({ length: SIDES + 1 }, (_, i) => i);
  return [...steps.map((i) => turn(outer, i)), ...steps.toReversed().map((i) => turn(inner, i))];
}

/** A tube cut across, with whatever turns inside it. */
function tubeSection(od: number, wall: number, stock: number | null): Outline[] {
  const bore = Math.max(0, od / 2 - wall);
  const reach = od * 0.62;
  return [
    circle('outline', origin, od / 2),
    ...(wall > 0 && bore > 0 ? [circle('outline', origin, bore), hatch(ring(od / 2, bore))] : []),
    ...(stock === null ? [] : [circle('outline', origin, stock / 2), hatch(ring(stock / 2, 0), true)]),
    polyline('axis', [point(-reach, 0), point(reach, 0)]),
    polyline('axis', [point(0, -reach), point(0, reach)]),
  ];
}

const across = (od: number, size: number): Picture['measured'] =>
  length(point(-size / 2, -od * 0.66), point(size / 2, -od * 0.66), [
    point(-size / 2, 0),
    point(size / 2, 0),
  ]);

const outside =
  (od: CellName, wall: CellName, stock?: CellName) =>
  ({ n }: Bench): Picture => ({
    shapes: tubeSection(n(od), n(wall), stock === undefined ? null : n(stock)),
    measured: across(n(od), n(od)),
    wide: n(od) * 3,
    about: point(0, -n(od) * 0.12),
  });

const wallOf =
  (od: CellName, wall: CellName, stock?: CellName) =>
  ({ n }: Bench): Picture => ({
    shapes: tubeSection(n(od), n(wall), stock === undefined ? null : n(stock)),
    measured: length(point(-n(od) / 2, 0), point(-n(od) / 2 + n(wall), 0)),
    wide: Math.max(n(wall) * 9, n(od) * 0.6),
    about: point(-n(od) / 2 + n(wall) / 2, 0),
  });

/** A tube seen from the side, with a break where it is long. */
function piece(from: number, to: number, od: number): Outline[] {
  return [
    polygon('outline', box(from, to, -od / 2, od / 2)),
    polyline('axis', [point(from - od * 0.4, 0), point(to + od * 0.4, 0)]),
  ];
}

const tubeLength =
  (size: CellName, od: CellName) =>
  ({ n }: Bench): Picture => ({
    shapes: piece(0, n(size), n(od)),
    measured: level(-n(od) * 1.6, 0, n(size), -n(od) / 2),
    wide: n(size) * 1.35,
  });

/** Tubes cut across or lengthwise. */
export const sectionPictures: Pictures = {
  tube_od: outside('tube_od', 'tube_wall', 'stock_diameter'),
  tube_wall: wallOf('tube_od', 'tube_wall', 'stock_diameter'),
  stock_diameter: ({ n }) => ({
    shapes: tubeSection(n('tube_od'), n('tube_wall'), n('stock_diameter')),
    measured: across(n('tube_od'), n('stock_diameter')),
    wide: n('tube_od') * 3,
    about: point(0, -n('tube_od') * 0.12),
  }),
  strut_od: outside('strut_od', 'strut_wall'),
  strut_wall: wallOf('strut_od', 'strut_wall'),
  single_strut_od: outside('single_strut_od', 'single_strut_wall'),
  single_strut_wall: wallOf('single_strut_od', 'single_strut_wall'),
  strut_supply_length: tubeLength('strut_supply_length', 'strut_od'),
  single_strut_max: tubeLength('single_strut_max', 'single_strut_od'),
  saw_kerf: ({ n }) => {
    const [kerf, od] = [n('saw_kerf'), n('strut_od')];
    return {
      shapes: [...piece(-od * 3, 0, od), ...piece(kerf, kerf + od * 3, od)],
      measured: level(-od * 0.8, 0, kerf, -od / 2),
      wide: Math.max(od * 2.6, kerf * 12),
      about: point(kerf / 2, -od * 0.15),
    };
  },
  strut_end_allowance: ({ n }) => {
    const [allowance, od] = [n('strut_end_allowance'), n('strut_od')];
    const far = allowance + od * 3;
    const lug = od * 0.34;
    return {
      shapes: [
        polygon('choice', box(-lug, allowance + od, -lug, lug)),
        polygon('outline', box(allowance, far, -od / 2, od / 2)),
        breakLine(point(far, -od * 0.7), point(far, od * 0.7), od * 0.2),
        circle('choice', origin, od * 0.2),
        polyline('axis', [point(-od, 0), point(far + od * 0.3, 0)]),
      ],
      measured: length(point(0, -od), point(allowance, -od), [origin, point(allowance, -od / 2)]),
      wide: Math.max(od * 5, allowance * 4),
      about: point(allowance * 0.8, -od * 0.15),
    };
  },
};
