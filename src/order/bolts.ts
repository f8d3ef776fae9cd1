import { NoAnswer } from '../calc/answer.ts';
import { boltSize } from '../calc/fasteners/iso.ts';
import { boltShelf, threadOf, type Usual, usualOf } from '../calc/fasteners/iso-bolts.ts';
import { type InchBolt, nearestUnc, uncLength, uncStressArea } from '../calc/fasteners/unc.ts';
import { type Ask, numberOf, numbersOf } from './ask.ts';
import { flangeOf } from './bolt-pattern.ts';
import { type Place, placeWords } from './feet.ts';
import { missingSentence } from './missing.ts';

/** Faces further off square than this want taper washers; common practice, no source. */
export const SQUARE_ENOUGH = 1;

/**
 * What keeps a nut from turning: a thin second nut where a full pitch then still shows (EN 1090-2 8.2.2), else a nut with
 * a locking ring in place of the plain one. The ring's nut is at most 1.6 mm the higher of the two, so the two pitches
 * that every bolt shows past a plain nut come through it in every size.
 */
export type Lock = 'second nut' | 'locking nut';

/**
 * The bolts of one place: the one list that every sheet, page and drawing takes them from. Lengths in mm; counts are for
 * the place, not for one bolt.
 */
export interface BoltOrder {
  readonly place: Place;
  readonly name: string;
  readonly count: number;
  readonly diameter: number;
  readonly grip: number;
  /** The standard length to buy; absent when none is long enough and rod is cut to `rod`. */
  readonly length?: number;
  readonly rod?: number;
  readonly usual?: Usual;
  /** Thread beyond the nut. */
  readonly beyond?: number;
  /** Whether the thread of a bolt with a shank reaches down to the washer under the nut. */
  readonly threadReaches?: boolean;
  readonly washers: number;
  readonly taperWashers: number;
  readonly taper: number;
  readonly nuts: number;
  readonly lock: Lock;
  readonly inch: InchBolt;
  readonly inchLength?: number;
  /** Stress area of the inch bolt over the metric one's. */
  readonly inchShare: number;
}

/** What to buy for one place, or why it cannot be said. */
export function boltOrder(ask: Ask, place: Place): BoltOrder | string {
  const what = `the bolts of the ${placeWords[place].toLowerCase()}`;
  const which = place === 'lower' ? 'lower' : 'foot';
  const it = numbersOf(ask, 'bolt_diameter', `${which}_bolt_grip`);
  const flange = flangeOf(ask, place);
  if ('missing' in it) return missingSentence(what, it.missing);
  if ('missing' in flange) return missingSentence(what, flange.missing);
  const [diameter, grip] = it.got;
  const [size, shelf] = [boltSize(diameter), boltShelf(diameter)];
  if (size instanceof NoAnswer || shelf === undefined)
    return `No answer for ${what}: a through bolt of ${diameter} mm is not in the tables.`;
  const count = flange.bolts.length;
  const wedge = place === 'lower' ? (numberOf(ask, 'wedge_angle') ?? 0) : 0;
  const taperWashers = wedge > SQUARE_ENOUGH ? count : 0;
  const inch = nearestUnc(diameter);
  const inchLength = uncLength(grip, inch);
  const shared = {
    place,
    name: placeWords[place],
    count,
    diameter,
    grip,
    washers: 2 * count,
    taperWashers,
    taper: wedge,
    inch,
    ...(inchLength === undefined ? {} : { inchLength }),
    inchShare: uncStressArea(inch) / size.stressArea,
  };
  const length = numberOf(ask, `${which}_bolt_length`);
  if (length === undefined) {
    const rod = Math.ceil(grip + 2 * size.washer + 2 * size.nut + 2 * shelf.thinNut + 4 * size.pitch);
    return { ...shared, rod, nuts: 4 * count, lock: 'second nut' };
  }
  const beyond = length - grip - 2 * size.washer - size.nut;
  const lock: Lock = beyond >= shelf.thinNut + size.pitch ? 'second nut' : 'locking nut';
  return {
    ...shared,
    length,
    beyond,
    usual: usualOf(shelf, length),
    threadReaches: length - threadOf(shelf, length) <= grip + 2 * size.washer,
    nuts: lock === 'locking nut' ? count : 2 * count,
    lock,
  };
}
