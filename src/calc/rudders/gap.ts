import { type Answer, NoAnswer } from '../answer.ts';
import { record } from '../record.ts';
import { type PairGiven, pairArguments, sharedPair } from './pair.ts';

/** Least fore-and-aft distance between the two rudders, both amidships, over the heights they share, mm. */
export function rudderGap(balance: number, ...given: PairGiven): Answer {
  const pair = sharedPair(given);
  if (pair instanceof NoAnswer) return pair;
  const at = (z: number): number =>
    pair.along - pair.chord + z * (pair.alongSlope - pair.chordSlope) - balance;
  return Math.min(at(pair.from), at(pair.to));
}

export const rudderGapRecord = record({
  id: 'RUDDER_GAP',
  title: 'Between the two rudders, both amidships',
  arguments: [
    { name: 'balance', unit: 'mm', meaning: "The auxiliary rudder's part ahead of the shaft", least: 0 },
    ...pairArguments,
  ],
  unit: 'mm',
  formula:
    "shaft axis less balance less the after edge of the boat's own rudder, the least over the shared heights",
  source: 'plane geometry',
  example: {
    given: [50, 800, -100, -100, -1100, 20, 60, 280, 520, 300, 45, 700, 45],
    answer: 50,
    tolerance: 1e-9,
    source: 'by hand: at −100 the axis is at 520 − 400, less 50, less 20',
  },
  run: rudderGap,
});
