import { cos, degrees, sin, tan } from '../angle.ts';
import { record } from '../record.ts';

/**
 * How the boat lies against gravity while it is measured, degrees from how it sails: trim plus when the stern is
 * deeper, list plus when the starboard side is lower.
 */
export interface Lie {
  readonly trim: number;
  readonly list: number;
}

/** A place on the centreline against gravity, mm from the waterline mark: level aft, and plumb up. */
export interface Place {
  readonly aft: number;
  readonly up: number;
}

/**
 * A place on the centreline in the boat's own axes. The boat is taken to be heeled by the list about its own length,
 * then turned by the trim about a level line athwart.
 */
export const inBoat = ({ aft, up }: Place, { trim, list }: Lie): { x: number; z: number } => ({
  x: aft * cos(trim) - up * sin(trim),
  z: (aft * sin(trim) + up * cos(trim)) / cos(list),
});

export const lieArguments = [
  { name: 'trim', unit: 'deg', meaning: 'The trim while measuring, plus with the stern deeper' },
  { name: 'list', unit: 'deg', meaning: 'The list while measuring, plus with starboard lower' },
] as const;

/** A slope read against gravity, degrees from plumb and + when the top is further aft, as the boat's own. */
export const levelledSlope = (seen: number, trim: number, list: number): number =>
  degrees(Math.atan(tan(seen - trim) * cos(list)));

export const levelledSlopeRecord = record({
  id: 'LEVELLED_SLOPE',
  title: 'A slope corrected for trim and list',
  arguments: [
    {
      name: 'seen',
      unit: 'deg',
      meaning: 'The slope read against gravity, plus when the top is further aft',
    },
    ...lieArguments,
  ],
  unit: 'deg',
  formula: 'the angle whose tangent is tan(slope − trim) × cos(list)',
  source: 'rotation of axes',
  example: {
    given: [12, 2, 60],
    answer: (Math.atan(0.5 * 0.17632698070846498) * 180) / Math.PI,
    tolerance: 1e-12,
    source: 'tan 10° = 0.1763269807, half of it at 60° of list',
  },
  run: levelledSlope,
});

/** Trim from how far the water stands above the waterline marks at the stern and forward, degrees. */
export const trimAngle = (stern: number, forward: number, apart: number): number =>
  degrees(Math.atan2(stern - forward, apart));

export const trimAngleRecord = record({
  id: 'TRIM_ANGLE',
  title: 'Trim from the waterline marks',
  arguments: [
    { name: 'stern', unit: 'mm', meaning: 'How far the water stands above the mark at the stern' },
    { name: 'forward', unit: 'mm', meaning: 'How far the water stands above the mark forward' },
    { name: 'apart', unit: 'mm', meaning: 'How far apart the marks are, level', above: 0 },
  ],
  unit: 'deg',
  formula: 'the angle whose tangent is the difference of the two over their distance',
  source: 'plane geometry',
  example: { given: [60, -40, 100], answer: 45, tolerance: 1e-12, source: 'tan 45° = 1' },
  run: trimAngle,
});

/** A height read plumb above the waterline mark, as the boat's own height, mm; `aft` is level from the mark. */
export const levelledHeight = (up: number, aft: number, trim: number, list: number): number =>
  inBoat({ aft, up }, { trim, list }).z;

export const levelledHeightRecord = record({
  id: 'LEVELLED_HEIGHT',
  title: 'A height corrected for trim and list',
  arguments: [
    { name: 'height', unit: 'mm', meaning: 'The height read plumb above the waterline mark' },
    { name: 'aft', unit: 'mm', meaning: 'How far aft of the mark it was read, level' },
    ...lieArguments,
  ],
  unit: 'mm',
  formula: '(level distance aft × sin(trim) + height × cos(trim)) over cos(list)',
  source: 'rotation of axes',
  example: {
    given: [200, 100, 30, 60],
    answer: 100 + 200 * Math.sqrt(3),
    tolerance: 1e-9,
    source: '100 × ½ and 200 × √3/2, over ½',
  },
  run: levelledHeight,
});
