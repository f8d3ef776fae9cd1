import { type Answer, NoAnswer } from '../answer.ts';
import { record } from '../record.ts';
import { leastRadialGap, type PairGiven, pairArguments, pairBetween } from './pair.ts';

const range = (given: PairGiven, shaftTop: number): readonly [number, number] => [
  Math.max(given[0], given[3]),
  Math.min(given[2], shaftTop),
];

/** 1 when the boat's own rudder reaches heights that the shaft or its stock takes up, else 0. */
export const shaftBesideRudder = (
  vaneHead: number,
  mainHead: number,
  mainFoot: number,
  shaftTop: number,
): number => (Math.max(vaneHead, mainFoot) <= Math.min(mainHead, shaftTop) ? 1 : 0);

/**
 * Least distance, mm, from the boat's own rudder, swung anywhere, to the tube at or above the bottom bearing or to
 * the bare stock below it. No answer when they share no height.
 */
export function shaftGap(
  tubeOd: number,
  stockDiameter: number,
  shaftFoot: number,
  shaftTop: number,
  ...given: PairGiven
): Answer {
  const [from, to] = range(given, shaftTop);
  if (from > to) return new NoAnswer("The shaft stands wholly above the boat's own rudder.");
  const pair = pairBetween(from, to, given);
  const tube =
    to >= shaftFoot
      ? leastRadialGap(pair, Math.max(from, shaftFoot), to) - tubeOd / 2
      : Number.POSITIVE_INFINITY;
  const stock =
    from < shaftFoot
      ? leastRadialGap(pair, from, Math.min(to, shaftFoot)) - stockDiameter / 2
      : Number.POSITIVE_INFINITY;
  return Math.min(tube, stock);
}

export const shaftBesideRudderRecord = record({
  id: 'SHAFT_BESIDE_RUDDER',
  title: "Does the boat's own rudder reach up beside the shaft",
  arguments: [
    { name: 'vane_head', unit: 'mm', meaning: "The auxiliary rudder's head" },
    { name: 'main_head', unit: 'mm', meaning: "The head of the boat's own rudder" },
    { name: 'main_foot', unit: 'mm', meaning: "The foot of the boat's own rudder" },
    { name: 'shaft_top', unit: 'mm', meaning: "The shaft's top" },
  ],
  unit: '–',
  flag: true,
  formula: "TRUE when the heights of the boat's own rudder and of shaft and stock overlap",
  source: 'plane geometry',
  example: { given: [-50, -100, -1200, 1100], answer: 0, tolerance: 0, source: 'by hand: −50 is above −100' },
  run: shaftBesideRudder,
});

export const shaftGapRecord = record({
  id: 'SHAFT_GAP',
  title: "Between the boat's own rudder and the shaft",
  arguments: [
    { name: 'tube_od', unit: 'mm', meaning: "The tube's outside diameter", above: 0 },
    { name: 'stock_diameter', unit: 'mm', meaning: "The stock's diameter", above: 0 },
    { name: 'shaft_foot', unit: 'mm', meaning: 'The bottom bearing’s height' },
    { name: 'shaft_top', unit: 'mm', meaning: "The shaft's top" },
    ...pairArguments,
  ],
  unit: 'mm',
  formula:
    "distance of the two axes less the reach of the boat's own rudder less half the tube (half the stock below the bottom bearing), the least over the shared heights",
  source: 'plane geometry',
  example: {
    given: [60, 40, -300, 1100, -100, -950, -100, -1100, 20, 60, 280, 520, 300, 45, 700, 45],
    answer: 170,
    tolerance: 1e-9,
    source: 'by hand: at −100 the axes are 500 apart (400, 300), less 300, less 30',
  },
  run: shaftGap,
});
