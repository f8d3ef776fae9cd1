import { point } from '../point.ts';
import { type Bench, type Pictures, water } from './bench.ts';
import { level, type Picture, upright } from './picture.ts';

/** Head and foot of the auxiliary rudder, and x of its axis there. */
function ends({ n, shaft }: Bench): { head: number; foot: number; headX: number; footX: number } {
  const head = n('vane_rudder_head');
  const foot = head - n('vane_rudder_span') * shaft.upright;
  return { head, foot, headX: shaft.at(head).x, footX: shaft.at(foot).x };
}

const view = (bench: Bench): Picture['shapes'] => [
  water,
  ...bench.side(
    'rudder_overhang',
    'transom_rake',
    'shaft_foot_height',
    'lower_bracket_height',
    'vane_rudder_span',
  ),
];

/** Sizes of the auxiliary rudder. */
export const rudderPictures: Pictures = {
  vane_rudder_chord: (bench) => {
    const { n } = bench;
    const { foot, footX } = ends(bench);
    const from = footX - n('vane_rudder_balance');
    return {
      shapes: view(bench),
      measured: level(foot - 50, from, from + n('vane_rudder_chord'), foot),
      about: point(footX, foot + n('vane_rudder_chord') * 0.1),
    };
  },
  vane_rudder_balance: (bench) => {
    const { n } = bench;
    const { foot, footX } = ends(bench);
    const from = footX - n('vane_rudder_balance');
    return {
      shapes: view(bench),
      measured: level(foot - 40, from, footX, foot),
      wide: Math.max(300, n('vane_rudder_balance') * 5),
      about: point(footX, foot),
    };
  },
  vane_rudder_span: (bench) => {
    const { n } = bench;
    const { head, foot, headX, footX } = ends(bench);
    const tail = n('vane_rudder_chord') - n('vane_rudder_balance');
    const line = Math.max(headX, footX) + tail + 110;
    return {
      shapes: view(bench),
      measured: upright(line, foot, head, footX + tail, headX + tail),
      about: point(headX, (head + foot) / 2),
    };
  },
  vane_rudder_drop: (bench) => {
    const { n, shaft } = bench;
    const { head, headX } = ends(bench);
    const low = n('shaft_foot_height');
    const line = Math.max(headX, shaft.at(low).x) + n('vane_rudder_chord') - n('vane_rudder_balance') + 30;
    return {
      shapes: view(bench),
      measured: upright(line, head, low, headX, shaft.at(low).x + n('tube_od') / 2),
      wide: Math.max(460, n('vane_rudder_drop') * 3.4),
      about: point(headX + 40, (head + low) / 2),
    };
  },
  vane_rudder_swing: ({ n, plan, shaft }) => {
    const astern = Math.max(40, n('vane_rudder_chord') - n('vane_rudder_balance'));
    const head = n('vane_rudder_head');
    const at = point(shaft.at(head).x, -n('shaft_offset'));
    return {
      shapes: plan('vane_rudder_span'),
      measured: {
        kind: 'angle',
        at,
        from: 0,
        to: Math.min(170, n('vane_rudder_swing')),
        radius: astern * 0.75,
      },
      wide: astern * 2.8,
      about: point(at.x + astern * 0.4, at.y + astern * 0.1),
    };
  },
  rudder_gap_min: (bench) => {
    const { n } = bench;
    const { foot } = ends(bench);
    const edge = n('rudder_overhang_foot');
    const z = Math.max(foot, n('main_rudder_foot'));
    return {
      shapes: view(bench),
      measured: level(z - 40, edge, edge + n('rudder_gap_min'), z),
      wide: Math.max(320, n('rudder_gap_min') * 5),
      about: point(edge + 40, z),
    };
  },
};
