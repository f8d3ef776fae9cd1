import { tan } from '../angle.ts';
import { NoAnswer } from '../answer.ts';
import type { Argument } from '../record.ts';

/**
 * Both rudders over their shared heights, seen in plan. All that matters runs straight with height: the distance of
 * the two turning axes fore and aft is `along + z·alongSlope`, the boat's own rudder reaches `chord + z·chordSlope`
 * aft of its axis. Lengths in mm.
 */
export interface Pair {
  readonly from: number;
  readonly to: number;
  readonly along: number;
  readonly alongSlope: number;
  readonly chord: number;
  readonly chordSlope: number;
  readonly offset: number;
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
  { name: 'lean', unit: 'deg', meaning: "The shaft's lean" },
  { name: 'offset', unit: 'mm', meaning: "The shaft's distance from the centreline" },
];

/** The pair between two heights; heights need not be shared. */
export function pairBetween(from: number, to: number, given: PairGiven): Pair {
  const [, , mainHead, mainFoot, overhang, overhangFoot, stockAhead, shaftX, lowerBracket, lean, offset] =
    given;
  const alongSlope = tan(lean);
  const chordSlope = (overhang - overhangFoot) / (mainHead - mainFoot);
  return {
    from,
    to,
    along: shaftX - lowerBracket * alongSlope + stockAhead,
    alongSlope,
    chord: overhang - mainHead * chordSlope + stockAhead,
    chordSlope,
    offset,
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

/**
 * Least of (distance of the axes in plan − main chord) over the pair's heights, mm. That difference is convex in
 * height; it turns where the slope of the distance equals the slope of the chord, which has a closed form.
 */
export function leastRadialGap(pair: Pair, from = pair.from, to = pair.to): number {
  const at = (z: number): number => {
    const along = pair.along + z * pair.alongSlope;
    return Math.sqrt(along * along + pair.offset * pair.offset) - pair.chord - z * pair.chordSlope;
  };
  let least = Math.min(at(from), at(to));
  const ratio = pair.alongSlope === 0 ? 2 : pair.chordSlope / pair.alongSlope;
  if (Math.abs(ratio) < 1) {
    const along = (Math.abs(pair.offset) * ratio) / Math.sqrt(1 - ratio * ratio);
    const turn = (along - pair.along) / pair.alongSlope;
    if (turn > from && turn < to) least = Math.min(least, at(turn));
  }
  return least;
}
