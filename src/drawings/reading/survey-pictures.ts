import type { CellName, InputName } from '../../plan/names.ts';
import { type Point, point } from '../point.ts';
import type { Outline } from '../scene.ts';
import { polygon, polyline } from '../shapes.ts';
import { type Bench, type Pictures, water } from './bench.ts';
import { boatPictures } from './boat-pictures.ts';
import { level, type Picture, upright } from './picture.ts';

/** A length that can be seen, whatever was read: its own where it is long enough, else a round one of its sign. */
const seen = (value: number, least: number): number =>
  Math.abs(value) >= least ? value : value < 0 ? -least : least;

const waterAt = (height: number): Outline => ({ kind: 'water', role: 'water', level: height });

/** A plumb line with its bob, from a batten. */
const plumbLine = (x: number, high: number, low: number): readonly Outline[] => [
  polyline('soft', [point(x, high), point(x, low)]),
  polygon('fastener', [point(x - 14, low), point(x + 14, low), point(x, low - 50)]),
];

const scribed = (at: Point): Outline => polyline('outline', [point(at.x - 30, at.y), point(at.x + 30, at.y)]);

const BOW = { ahead: -2600, deck: 700, keel: -450 };
/** A hull of no particular shape from the side, bow to the left, its waterline at 0. */
const hull: readonly Outline[] = [
  polyline('outline', [
    point(-90, 640),
    point(0, 0),
    point(-500, -220),
    point(-1500, BOW.keel),
    point(-2250, -260),
    point(BOW.ahead, 0),
    point(BOW.ahead - 300, BOW.deck),
    point(-90, 640),
  ]),
];

/** The ends of that hull, near enough to see a mark on them. */
const stem: readonly Outline[] = [
  polygon('outline', [point(-150, 420), point(0, 0), point(90, -160), point(320, -330), point(2000, 420)]),
];
const quarter: readonly Outline[] = [
  polygon('outline', [point(-60, 640), point(0, 0), point(-60, -90), point(-400, -190), point(-2000, 640)]),
];

/** Water above or below a mark on one end of the hull; `aft` says to which side the water lies. */
const mark =
  (name: CellName, end: readonly Outline[], aft: 1 | -1) =>
  ({ n }: Bench): Picture => {
    const stands = seen(n(name), 40);
    return {
      shapes: [waterAt(stands), ...end, scribed(point(0, 0))],
      measured: upright(aft * 90, 0, stands, aft * 30, aft * 80),
      wide: Math.max(420, Math.abs(stands) * 5),
      about: point(aft * 30, stands / 2),
    };
  };

/** The same reading against gravity, drawn as on the boat that sails. */
const as = (name: InputName): ((bench: Bench) => Picture) => boatPictures[name] as (bench: Bench) => Picture;

/** Readings of the survey that stand alone. */
export const surveyPictures: Pictures = {
  list_reading: ({ n, stern }) => {
    const half = n('transom_half_breadth');
    // A list of a degree would not be seen: it is drawn larger.
    const list = seen(n('list_reading'), 8);
    const at = point(-half * 0.75, n('transom_top') + 140);
    const fall = half * 1.5 * Math.tan((list * Math.PI) / 180);
    return {
      shapes: [
        ...stern('transom_rake'),
        polyline('axis', [at, point(at.x + half * 1.5, at.y)]),
        polyline('outline', [at, point(at.x + half * 1.5, at.y - fall)]),
      ],
      measured: {
        kind: 'angle',
        at,
        from: Math.min(0, -list),
        to: Math.max(0, -list),
        radius: half * 1.35,
      },
      wide: half * 3,
      about: point(0, n('transom_top') * 0.75),
    };
  },
  trim_mark_stern: mark('trim_mark_stern', quarter, 1),
  trim_mark_forward: mark('trim_mark_forward', stem, -1),
  trim_mark_span: () => ({
    shapes: [water, ...hull, scribed(point(0, 0)), scribed(point(BOW.ahead, 0))],
    measured: level(-620, BOW.ahead, 0, 0),
    wide: 3700,
    about: point(BOW.ahead / 2, 0),
  }),
  tape_zero_height: ({ n }) => {
    const zero = seen(n('tape_zero_height'), 150);
    const line = 330;
    return {
      shapes: [water, ...quarter, scribed(point(0, 0)), ...plumbLine(line, n('transom_top') + 60, -260)],
      measured: upright(line + 90, 0, zero, 30, line),
      wide: Math.max(1000, Math.abs(zero) * 3),
      about: point(line / 2, zero / 2),
    };
  },
  rudder_line_aft: ({ n, x, side }) => {
    const aft = seen(n('rudder_line_aft'), 140);
    const line = x(n('transom_bottom')) + 420;
    const [top, low] = [n('transom_top'), -320];
    return {
      shapes: [
        water,
        ...side('transom_rake', 'rudder_overhang'),
        ...plumbLine(line, top, low),
        ...plumbLine(line + aft, top, low),
      ],
      measured: level(top * 0.5, line, line + aft, top * 0.5),
      wide: 1500,
      about: point(line * 0.6, top * 0.3),
    };
  },
  rake_reading: as('transom_rake'),
  top_reading: as('transom_top'),
  bottom_reading: as('transom_bottom'),
  rudder_head_reading: as('main_rudder_head'),
  rudder_foot_reading: as('main_rudder_foot'),
};
