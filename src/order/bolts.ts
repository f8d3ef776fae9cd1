import { NoAnswer } from '../calc/answer.ts';
import { BOLT_LENGTHS, boltSize } from '../calc/fasteners/iso.ts';
import { type BoltShelf, boltShelf, threadOf, type Usual, usualOf } from '../calc/fasteners/iso-bolts.ts';
import { type InchBolt, nearestUnc, uncLength, uncStressArea } from '../calc/fasteners/unc.ts';
import { type Ask, numberOf, numbersOf } from './ask.ts';
import { flangeOf } from './bolt-pattern.ts';
import { type Place, placeWords } from './feet.ts';
import { missingSentence } from './missing.ts';

/** Faces further off square than this want taper washers; common practice, no source. */
export const SQUARE_ENOUGH = 1;

export type Lock = 'second nut' | 'locking nut' | 'longer bolt';

/** The bolts of one place. Lengths in mm; counts are for the place, not for one bolt. */
export interface BoltOrder {
  readonly place: Place;
  readonly name: string;
  readonly count: number;
  readonly diameter: number;
  readonly grip: number;
  /** The standard length; absent when none is long enough and rod is cut to `rod`. */
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
  /** What keeps the nut from turning, and the length that takes a second nut when this one does not. */
  readonly lock: Lock;
  readonly lockLength?: number;
  readonly inch: InchBolt;
  readonly inchLength?: number;
  /** Stress area of the inch bolt over the metric one's. */
  readonly inchShare: number;
}

function lockOf(
  shelf: BoltShelf,
  pitch: number,
  nut: number,
  length: number,
  beyond: number,
): Pick<BoltOrder, 'lock' | 'lockLength'> {
  if (beyond >= shelf.thinNut + pitch) return { lock: 'second nut' };
  if (beyond - (shelf.lockingNut - nut) >= pitch) return { lock: 'locking nut' };
  const longer = BOLT_LENGTHS.find((it) => it >= length - beyond + shelf.thinNut + pitch);
  return { lock: 'longer bolt', ...(longer === undefined ? {} : { lockLength: longer }) };
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
  const lock = lockOf(shelf, size.pitch, size.nut, length, beyond);
  const bought = lock.lockLength ?? length;
  return {
    ...shared,
    length,
    beyond,
    usual: usualOf(shelf, bought),
    threadReaches: bought - threadOf(shelf, bought) <= grip + 2 * size.washer,
    nuts: lock.lock === 'locking nut' ? count : 2 * count,
    ...lock,
  };
}
