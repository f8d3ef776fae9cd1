import { cos, degrees, sin, tan } from '../angle.ts';
import { record } from '../record.ts';
import { type Lie, lieArguments } from '../survey/lie.ts';

/** Leans of a shaft, degrees: aft plus when the top is further aft, side plus when it is further to starboard. */
export interface Leans {
  readonly aft: number;
  readonly side: number;
}

/**
 * Leans read against gravity, as the boat's own. The boat is taken to be heeled by the list about its own length, then
 * turned by the trim about a level line athwart, as the survey takes it.
 */
export function levelledLeans(seen: Leans, { trim, list }: Lie): Leans {
  const [aft, side] = [tan(seen.aft), tan(seen.side)];
  const up = aft * sin(trim) + cos(trim);
  const boatUp = side * sin(list) + up * cos(list);
  return {
    aft: degrees(Math.atan2(aft * cos(trim) - sin(trim), boatUp)),
    side: degrees(Math.atan2(side * cos(list) - up * sin(list), boatUp)),
  };
}

const seenArguments = [
  { name: 'aft', unit: 'deg', meaning: 'The lean read fore and aft, plus with the top further aft' },
  { name: 'side', unit: 'deg', meaning: 'The lean read to the side, plus with the top to starboard' },
] as const;

export const levelledLeanRecord = record({
  id: 'LEVELLED_LEAN',
  title: 'Fore-and-aft lean corrected for trim and list',
  arguments: [...seenArguments, ...lieArguments],
  unit: 'deg',
  formula: 'the direction of the shaft turned back by the trim, then by the list; its lean fore and aft',
  source: 'rotation of axes',
  example: {
    given: [60, 45, 30, 30],
    answer: (Math.atan(0.5) * 180) / Math.PI,
    tolerance: 1e-9,
    source: 'by hand: the direction (√3, 1, 1) is (1, 1, √3) without the trim and (1, 0, 2) without the list',
  },
  run: (aft: number, side: number, trim: number, list: number) =>
    levelledLeans({ aft, side }, { trim, list }).aft,
});

export const levelledSideLeanRecord = record({
  id: 'LEVELLED_SIDE_LEAN',
  title: 'Sideways lean corrected for list and trim',
  arguments: [...seenArguments, ...lieArguments],
  unit: 'deg',
  formula: 'the direction of the shaft turned back by the trim, then by the list; its lean to the side',
  source: 'rotation of axes',
  example: {
    given: [60, 45, 30, 60],
    answer: -30,
    tolerance: 1e-9,
    source:
      'by hand: the direction (√3, 1, 1) is (1, 1, √3) without the trim and (1, −1, √3) without the list',
  },
  run: (aft: number, side: number, trim: number, list: number) =>
    levelledLeans({ aft, side }, { trim, list }).side,
});
