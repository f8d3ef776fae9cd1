import { moved, point } from '../point.ts';
import { polyline } from '../shapes.ts';
import { type Bench, type Pictures, water } from './bench.ts';
import { level, upright } from './picture.ts';

const plumb = (low: number, high: number) => polyline('axis', [point(0, low), point(0, high)]);

/** Readings taken on the transom and on the boat's own rudder. */
export const boatPictures: Pictures = {
  transom_rake: ({ n, x, face, side }) => {
    const [low, high] = [n('transom_bottom'), n('transom_top')];
    const at = point(x(low), low);
    const radius = (high - low) * 0.62;
    return {
      shapes: [
        water,
        ...side('transom_rake'),
        polyline('axis', [at, moved(at, { x: 0, y: 1 }, (high - low) * 0.95)]),
      ],
      measured: { kind: 'angle', at, from: 90, to: 90 - face.rake, radius },
      wide: (high - low) * 1.9,
      about: point((x(low) + x(high)) / 2, (low + high) / 2),
    };
  },
  transom_top: ({ n, x, side }) => {
    const top = n('transom_top');
    const line = Math.max(x(top), x(0)) + top * 0.18;
    return {
      shapes: [water, ...side('transom_rake')],
      measured: upright(line, 0, top, line, x(top)),
      about: point(line, top * 0.5),
    };
  },
  transom_bottom: ({ n, x, side }) => {
    const bottom = n('transom_bottom');
    const line = x(bottom) + 70;
    return {
      shapes: [water, ...side('transom_rake')],
      measured: upright(line, 0, bottom, line, x(bottom)),
      wide: Math.max(360, Math.abs(bottom) * 4),
    };
  },
  transom_half_breadth: ({ n, stern }) => {
    const half = n('transom_half_breadth');
    const z = n('port_foot_height');
    return {
      shapes: [water, ...stern('transom_rake', 'port_foot_height', 'starboard_foot_height'), centreline(n)],
      measured: level(z - 90, 0, half, z - 90, z),
      wide: half * 2.5,
      about: point(0, (n('transom_top') + n('transom_bottom')) / 2 + 60),
    };
  },
  transom_half_breadth_low: ({ n, stern }) => {
    const half = n('transom_half_breadth_low');
    const z = n('lower_bracket_height');
    return {
      shapes: [water, ...stern('transom_rake', 'lower_bracket_height'), centreline(n)],
      measured: level(z, 0, half, z, z),
      wide: half * 3,
      about: point(0, z + 60),
    };
  },
  rudder_overhang: ({ n, side }) => {
    const [head, edge] = [n('main_rudder_head'), n('rudder_overhang')];
    return {
      shapes: [water, ...side('transom_rake', 'rudder_overhang'), plumb(head * 2 - 80, 120)],
      measured: level(head + 45, 0, edge, head + 45, head),
      wide: Math.max(420, Math.abs(edge) * 5),
      about: point(edge / 2, head + 20),
    };
  },
  rudder_overhang_foot: ({ n, side }) => {
    const [foot, edge] = [n('main_rudder_foot'), n('rudder_overhang_foot')];
    return {
      shapes: [water, ...side('rudder_overhang'), plumb(foot - 120, 120)],
      measured: level(foot - 45, 0, edge, foot - 45, foot),
      wide: Math.max(420, Math.abs(edge) * 5),
      about: point(edge / 2, foot - 10),
    };
  },
  main_rudder_head: ({ n, side }) => {
    const [head, edge] = [n('main_rudder_head'), n('rudder_overhang')];
    const line = edge + 70;
    return {
      shapes: [water, ...side('transom_rake', 'rudder_overhang')],
      measured: upright(line, head, 0, edge, line),
      wide: Math.max(500, Math.abs(head) * 3.6),
      about: point(edge, head / 2),
    };
  },
  main_rudder_foot: ({ n, side }) => {
    const [foot, edge] = [n('main_rudder_foot'), n('rudder_overhang_foot')];
    const line = Math.max(edge, n('rudder_overhang')) + 160;
    return {
      shapes: [water, ...side('transom_rake', 'rudder_overhang')],
      measured: upright(line, foot, 0, edge, line),
      about: point(edge, foot / 2),
    };
  },
  rudder_stock_ahead: ({ n, side }) => {
    const ahead = n('rudder_stock_ahead');
    const head = n('main_rudder_head');
    return {
      shapes: [water, ...side('transom_rake', 'rudder_overhang'), plumb(head - 140, 140)],
      measured: level(head - 70, -ahead, 0, head - 70),
      wide: Math.max(500, Math.abs(ahead) * 2),
      about: point(-ahead / 2, head + 20),
    };
  },
  main_rudder_swing: ({ n, plan }) => {
    const ahead = n('rudder_stock_ahead');
    const chord = Math.max(80, ahead + n('rudder_overhang'));
    return {
      shapes: plan('rudder_overhang'),
      measured: {
        kind: 'angle',
        at: point(-ahead, 0),
        from: 0,
        to: Math.min(170, n('main_rudder_swing')),
        radius: chord * 0.72,
      },
      wide: chord * 2,
      about: point(-ahead + chord * 0.55, chord * 0.12),
    };
  },
  heel_angle: ({ n, stern }) => {
    const half = n('transom_half_breadth');
    const heel = Math.min(80, n('heel_angle'));
    const rise = half * 1.2 * Math.tan((heel * Math.PI) / 180);
    return {
      shapes: [
        water,
        ...stern('transom_rake', 'lower_bracket_height'),
        centreline(n),
        polyline('heeled', [point(-half * 1.2, -rise), point(half * 1.2, rise)]),
      ],
      measured: { kind: 'angle', at: point(0, 0), from: 0, to: heel, radius: half * 0.9 },
      wide: half * 2.9,
      about: point(half * 0.2, n('transom_top') * 0.35),
    };
  },
};

function centreline(n: Bench['n']) {
  return polyline('axis', [point(0, n('transom_bottom') - 60), point(0, n('transom_top') + 60)]);
}
