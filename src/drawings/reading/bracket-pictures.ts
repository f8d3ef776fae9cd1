import type { CellName } from '../../plan/names.ts';
import { strutOf } from '../feet.ts';
import { seen } from '../plan/sheet.ts';
import { moved, point } from '../point.ts';
import { flangeOf } from '../side/flange.ts';
import { stackOf } from '../side/stack.ts';
import { type Bench, type Pictures, water } from './bench.ts';
import { length, level, type Picture, upright } from './picture.ts';

const nothing = point(0, 0);

/** What lies behind the transom would only crowd a close view. */
const uncovered = (shapes: Picture['shapes']): Picture['shapes'] =>
  shapes.filter((shape) => shape.role !== 'hidden');

/** From astern, close to the lower flange. */
function flangeSize(bench: Bench, name: CellName, measured: Picture['measured']): Picture {
  return {
    shapes: uncovered(bench.stern('transom_rake', 'lower_bracket_height')),
    measured,
    wide: Math.max(300, bench.n(name) * 3.4),
    about: point(bench.n('shaft_offset'), bench.n('lower_bracket_height')),
  };
}

/** From astern, close to the port foot. */
function footSize(bench: Bench, measured: Picture['measured']): Picture {
  const { n } = bench;
  return {
    shapes: uncovered(bench.stern('transom_rake', 'port_foot_height')),
    measured,
    wide: Math.max(260, Math.max(n('foot_width'), n('foot_height'), n('foot_bolt_spacing')) * 3.8),
    about: point(n('port_foot_y'), n('port_foot_height')),
  };
}

const upperParts = [
  'transom_rake',
  'shaft_foot_height',
  'upper_bracket_height',
  'port_foot_height',
  'single_foot_height',
];

/** Sizes of both brackets, their flanges and feet. */
export const bracketPictures: Pictures = {
  lower_reach: (bench) => {
    const { n, shaft, values, ground } = bench;
    const z = n('lower_bracket_height');
    const from = flangeOf(values, ground)?.middle ?? nothing;
    const axis = shaft.at(z);
    const y = z - Math.max(n('lower_flange_height'), n('lower_clamp_depth')) / 2 - 40;
    return {
      shapes: [
        water,
        ...bench.side(
          'transom_rake',
          'shaft_foot_height',
          'shim_count',
          'wedge_edge',
          'lower_bracket_height',
        ),
      ],
      measured: length(point(from.x, y), point(axis.x, y), [from, axis]),
      wide: Math.max(420, n('lower_reach') * 3),
      about: point((from.x + axis.x) / 2, z - 20),
    };
  },
  lower_flange_height: (bench) => {
    const { n } = bench;
    const [y, z, half] = [
      n('shaft_offset') + n('lower_flange_width') / 2,
      n('lower_bracket_height'),
      n('lower_flange_height') / 2,
    ];
    return flangeSize(bench, 'lower_flange_width', upright(y + 45, z - half, z + half, y));
  },
  lower_flange_width: (bench) => {
    const { n } = bench;
    const [y, half, z] = [
      n('shaft_offset'),
      n('lower_flange_width') / 2,
      n('lower_bracket_height') + n('lower_flange_height') / 2,
    ];
    return flangeSize(bench, 'lower_flange_width', level(z + 40, y - half, y + half, z));
  },
  lower_bolt_spacing: (bench) => {
    const { n } = bench;
    const [y, half, z] = [n('shaft_offset'), n('lower_bolt_spacing') / 2, n('lower_bracket_height')];
    return flangeSize(
      bench,
      'lower_flange_width',
      level(z - n('lower_flange_height') / 2 - 30, y - half, y + half, z),
    );
  },
  shim_stack_max: (bench) => {
    const { n, values, ground } = bench;
    const stack = stackOf(values, ground);
    const limit = n('shim_stack_max');
    const foot = stack === null ? nothing : moved(stack.foot, stack.up, -stack.halfLength);
    const out = stack?.out ?? { x: 1, y: 0 };
    const up = stack?.up ?? { x: 0, y: 1 };
    const from = moved(foot, up, -28);
    return {
      shapes: [
        water,
        ...bench.side(
          'transom_rake',
          'shim_count',
          'wedge_edge',
          'lower_bracket_height',
          'shaft_foot_height',
        ),
      ],
      measured: length(from, moved(from, out, limit), [foot, moved(foot, out, limit)]),
      wide: Math.max(300, limit * 5),
    };
  },
  pin_forward: (bench) => {
    const { n, shaft } = bench;
    const axis = shaft.at(n('upper_bracket_height'));
    const x = axis.x - n('pin_forward');
    const y = axis.y - n('upper_clamp_depth') / 2 - 30;
    return {
      shapes: bench.side(...upperParts),
      measured: length(point(x, y), point(axis.x, y), [point(x, axis.y), axis]),
      wide: Math.max(300, n('pin_forward') * 5),
      about: point(x, axis.y - 10),
    };
  },
  pin_half_width: (bench) => {
    const { n, shaft } = bench;
    const axis = seen(shaft.at(n('upper_bracket_height')).x, n('shaft_offset'));
    const half = n('pin_half_width');
    const x = axis.x + n('tube_od') / 2 + 55;
    const pin = axis.x - n('pin_forward');
    return {
      shapes: bench.plan('upper_bracket_height', 'port_foot_height', 'starboard_foot_height', 'transom_rake'),
      measured: length(point(x, axis.y), point(x, axis.y + half), [axis, point(pin, axis.y + half)]),
      wide: Math.max(340, half * 6),
      about: axis,
    };
  },
  foot_standoff: (bench) => {
    const { n, face, shaft, values } = bench;
    const strut = strutOf(values, face, shaft, 'port') ?? strutOf(values, face, shaft, 'single');
    if (strut === null) return { shapes: [], measured: length(nothing, nothing) };
    const { z, y } = strut;
    const at = point(face.x(z, y) ?? 0, z);
    const up = face.up(z);
    const out = face.out(z);
    const size = n('foot_standoff');
    const from = moved(at, up, -n('foot_height') / 2 - 16);
    return {
      shapes: bench.side(...upperParts),
      measured: length(from, moved(from, out, size), [
        moved(at, up, -n('foot_height') / 2),
        moved(at, out, size),
      ]),
      wide: Math.max(360, size * 6),
      about: moved(moved(at, out, size / 2), up, -n('foot_height') * 0.25),
    };
  },
  foot_width: (bench) => {
    const { n } = bench;
    const [y, half, z] = [
      n('port_foot_y'),
      n('foot_width') / 2,
      n('port_foot_height') + n('foot_height') / 2,
    ];
    return footSize(bench, level(z + 28, y - half, y + half, z));
  },
  foot_height: (bench) => {
    const { n } = bench;
    const [y, z, half] = [
      n('port_foot_y') - n('foot_width') / 2,
      n('port_foot_height'),
      n('foot_height') / 2,
    ];
    return footSize(bench, upright(y - 60, z - half, z + half, y));
  },
  foot_bolt_spacing: (bench) => {
    const { n } = bench;
    const [y, half, z] = [n('port_foot_y'), n('foot_bolt_spacing') / 2, n('port_foot_height')];
    return footSize(bench, level(z - n('foot_height') / 2 - 28, y - half, y + half, z));
  },
};
