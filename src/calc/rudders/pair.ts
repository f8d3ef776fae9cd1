import { tan } from '../angle.ts';
import { NoAnswer } from '../answer.ts';
import type { Argument } from '../record.ts';
import { leanArgument, sideLeanArgument } from '../shaft/upright-part.ts';

/**
 * Both rudders over their shared heights, seen in plan. All that matters runs straight with height: the distance of
 * the two turning axes fore and aft is `along + z·alongSlope`, abeam `across + z·acrossSlope`; the boat's own rudder
 * reaches `chord + z·chordSlope` aft of its axis. Lengths in mm.
 */
export interface Pair {
  readonly from: number;
  readonly to: number;
  readonly along: number;
  readonly alongSlope: number;
  readonly chord: number;
  readonly chordSlope: number;
  readonly across: number;
  readonly acrossSlope: number;
}

export type PairGiven = readonly [
  vaneHead: number,
  vaneFoot: number,
  mainHead: number,
  mainFoot: number,
  overhang: number,
  overhangFoot: number,
  stockAhead: number,
  shaftX: number,
  lowerBracket: number,
  lean: number,
  offset: number,
  sideLean?: number,
];

export const pairArguments: readonly Argument[] = [
  { name: 'vane_head', unit: 'mm', meaning: "The auxiliary rudder's head" },
  { name: 'vane_foot', unit: 'mm', meaning: "The auxiliary rudder's foot" },
  { name: 'main_head', unit: 'mm', meaning: "The head of the boat's own rudder" },
  { name: 'main_foot', unit: 'mm', meaning: "The foot of the boat's own rudder" },
  { name: 'overhang', unit: 'mm', meaning: 'x of its after edge at the head' },
  { name: 'overhang_foot', unit: 'mm', meaning: 'x of its after edge at the foot' },
  { name: 'stock_ahead', unit: 'mm', meaning: 'How far its turning axis is forward of x = 0' },
  { name: 'shaft_x', unit: 'mm', meaning: "The shaft axis's x at the lower bracket" },
  { name: 'lower_bracket_height', unit: 'mm', meaning: "The lower bracket's height" },
  leanArgument,
  { name: 'offset', unit: 'mm', meaning: "The shaft's distance from the centreline at the lower bracket" },
  sideLeanArgument,
];

/** The pair between two heights; heights need not be shared. */
export function pairBetween(from: number, to: number, given: PairGiven): Pair {
  const [, , mainHead, mainFoot, overhang, overhangFoot, stockAhead, shaftX, lowerBracket, lean, offset] =
    given;
  const alongSlope = tan(lean);
  const acrossSlope = tan(given[11] ?? 0);
  const chordSlope = (overhang - overhangFoot) / (mainHead - mainFoot);
  return {
    from,
    to,
    along: shaftX - lowerBracket * alongSlope + stockAhead,
    alongSlope,
    chord: overhang - mainHead * chordSlope + stockAhead,
    chordSlope,
    across: offset - lowerBracket * acrossSlope,
    acrossSlope,
  };
}

/** The pair over the heights both rudders share, ends included; no answer when there are none. */
export function sharedPair(given: PairGiven): Pair | NoAnswer {
  const [vaneHead, vaneFoot, mainHead, mainFoot] = given;
  if (!(mainHead > mainFoot)) return new NoAnswer("The boat's own rudder has its head below its foot.");
  const from = Math.max(vaneFoot, mainFoot);
  const to = Math.min(vaneHead, mainHead);
  if (from > to) return new NoAnswer('The two rudders share no height.');
  return pairBetween(from, to, given);
}

/** Distance of the two axes in plan less the reach of the boat's own rudder at a height, mm. */
function radialGap(pair: Pair, z: number): number {
  const along = pair.along + z * pair.alongSlope;
  const across = pair.across + z * pair.acrossSlope;
  return Math.sqrt(along * along + across * across) - pair.chord - z * pair.chordSlope;
}

/**
 * Least of (distance of the axes in plan − main chord) over the pair's heights, mm. That difference is convex in
 * height; it turns where the slope of the distance equals the slope of the chord, which has a closed form: the axes
 * come nearest to each other at one height, and away from it the distance grows as a hyperbola.
 */
export function leastRadialGap(pair: Pair, from = pair.from, to = pair.to): number {
  let least = Math.min(radialGap(pair, from), radialGap(pair, to));
  const { along, alongSlope, across, acrossSlope, chordSlope } = pair;
  const slope = Math.sqrt(alongSlope * alongSlope + acrossSlope * acrossSlope);
  const ratio = slope === 0 ? 2 : chordSlope / slope;
  if (Math.abs(ratio) < 1) {
    const nearest = -(along * alongSlope + across * acrossSlope) / (slope * slope);
    const apart = Math.abs(along * acrossSlope - across * alongSlope) / slope;
    const turn = nearest + (apart * ratio) / (slope * Math.sqrt(1 - ratio * ratio));
    if (turn > from && turn < to) least = Math.min(least, radialGap(pair, turn));
  }
  return least;
}
