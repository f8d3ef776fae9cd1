import type { CellName } from '../../plan/names.ts';
import { moved, type Point, point } from '../point.ts';
import { clampWall } from '../side/clamp.ts';
import { type Bench, type Pictures, water } from './bench.ts';
import { length, level, type Measure, type Picture } from './picture.ts';

/** A length along the shaft, its line `aside` mm aft of the axis, extension lines from `onPart` mm aft of it. */
function along({ shaft }: Bench, low: Point, size: number, aside: number, onPart: number): Measure {
  const high = moved(low, shaft.up, size);
  const set = (p: Point, by: number): Point => moved(p, shaft.aft, by);
  return length(set(low, aside), set(high, aside), [set(low, onPart), set(high, onPart)]);
}

const ROUND_SHAFT = [
  'shaft_foot_height',
  'lower_bracket_height',
  'upper_bracket_height',
  'drive_overlap',
  'vane_rudder_span',
  'transom_rake',
];

const view = (bench: Bench): Picture['shapes'] => [water, ...bench.side(...ROUND_SHAFT)];

function clampDepth(bench: Bench, height: CellName, depth: CellName): Picture {
  const { n, shaft } = bench;
  const od = n('tube_od');
  const low = moved(shaft.at(n(height)), shaft.up, -n(depth) / 2);
  const edge = od / 2 + clampWall(od);
  return {
    shapes: view(bench),
    measured: along(bench, low, n(depth), edge + 45, edge),
    wide: Math.max(320, n(depth) * 4),
  };
}

function fromBearing(bench: Bench, limit: CellName): Picture {
  const { n, shaft } = bench;
  const od = n('tube_od');
  const reach = Math.max(n(limit), 80);
  return {
    shapes: view(bench),
    measured: along(bench, shaft.at(n('shaft_foot_height')), n(limit), od / 2 + 75, od / 2),
    wide: reach * 3.2,
  };
}

/** Sizes of shaft and drive unit, and the clearances the gear asks for along it. */
export const shaftPictures: Pictures = {
  shaft_length: (bench) => {
    const { n, shaft } = bench;
    const od = n('tube_od');
    const size = n('shaft_length');
    return {
      shapes: view(bench),
      measured: along(bench, shaft.at(n('shaft_foot_height')), size, od / 2 + size * 0.14, od / 2),
    };
  },
  bearing_gap_min: (bench) => fromBearing(bench, 'bearing_gap_min'),
  bearing_gap_max: (bench) => fromBearing(bench, 'bearing_gap_max'),
  spacing_min: (bench) => {
    const { n, shaft } = bench;
    const od = n('tube_od');
    return {
      shapes: view(bench),
      measured: along(bench, shaft.at(n('lower_bracket_height')), n('spacing_min'), od / 2 + 110, od / 2),
    };
  },
  drive_overlap: (bench) => {
    const { n, shaft } = bench;
    const low = moved(shaft.at(n('shaft_foot_height')), shaft.up, n('shaft_length') - n('drive_overlap'));
    return {
      shapes: view(bench),
      measured: along(bench, low, n('drive_overlap'), n('drive_forward') + 60, n('tube_od') / 2),
      wide: Math.max(400, n('drive_overlap') * 3.2),
    };
  },
  drive_forward: (bench) => {
    const { n, shaft } = bench;
    const low = moved(shaft.at(n('shaft_foot_height')), shaft.up, n('shaft_length') - n('drive_overlap'));
    const y = low.y - 35;
    return {
      shapes: view(bench),
      measured: length(point(low.x - n('drive_forward'), y), point(low.x, y), [
        point(low.x - n('drive_forward'), low.y),
        point(low.x, y + 1),
      ]),
      wide: Math.max(280, n('drive_forward') * 4.5),
    };
  },
  drive_gap_min: (bench) => {
    const { n, shaft } = bench;
    const od = n('tube_od');
    const low = moved(shaft.at(n('upper_bracket_height')), shaft.up, n('upper_clamp_depth') / 2);
    const edge = od / 2 + clampWall(od);
    return {
      shapes: view(bench),
      measured: along(bench, low, n('drive_gap_min'), edge + 30, edge),
      wide: Math.max(260, n('drive_gap_min') * 8),
    };
  },
  face_gap_min: (bench) => {
    const { n, x } = bench;
    const z = (n('lower_bracket_height') + n('upper_bracket_height')) / 2;
    return {
      shapes: view(bench),
      measured: level(z, x(z), x(z) + n('face_gap_min'), z),
      wide: Math.max(640, n('face_gap_min') * 5),
    };
  },
  lower_clamp_depth: (bench) => clampDepth(bench, 'lower_bracket_height', 'lower_clamp_depth'),
  upper_clamp_depth: (bench) => clampDepth(bench, 'upper_bracket_height', 'upper_clamp_depth'),
};
