import { type Answer, NoAnswer } from '../answer.ts';
import { record } from '../record.ts';
import { leastRadialGap, type PairGiven, pairArguments, sharedPair } from './pair.ts';

/** Least distance, mm, when the auxiliary rudder turns right round, as it may going astern. Negative: they meet. */
export function rudderGapTurned(chord: number, balance: number, ...given: PairGiven): Answer {
  const pair = sharedPair(given);
  if (pair instanceof NoAnswer) return pair;
  return leastRadialGap(pair) - Math.max(balance, chord - balance);
}

export const rudderGapTurnedRecord = record({
  id: 'RUDDER_GAP_TURNED',
  title: 'Between the two rudders, the auxiliary one turned right round',
  arguments: [
    { name: 'chord', unit: 'mm', meaning: "The auxiliary rudder's chord", above: 0 },
    { name: 'balance', unit: 'mm', meaning: "The auxiliary rudder's part ahead of the shaft", least: 0 },
    ...pairArguments,
  ],
  unit: 'mm',
  formula:
    "distance of the two axes less the reach of the boat's own rudder less the longer part of the auxiliary rudder, the least over the shared heights",
  source: 'plane geometry',
  example: {
    given: [220, 50, 800, -100, -100, -1100, 20, 60, 280, 520, 300, 45, 700, 45],
    answer: 30,
    tolerance: 1e-9,
    source: 'by hand: at −100 the axes are 500 apart (400, 300), less 300, less 170',
  },
  run: rudderGapTurned,
});
