import { cos, sin, tan } from '../angle.ts';
import { type Answer, NoAnswer } from '../answer.ts';
import { record } from '../record.ts';
import { leastConvex } from './least-convex.ts';
import { leastRadialGap, type Pair, type PairGiven, pairArguments, sharedPair } from './pair.ts';
import { type Sector, sectorDistance } from './sector.ts';

/** A chord that tapers to the turning axis comes out of the interpolation a rounding either side of 0, mm. */
const HAIR = 1e-9;

/** A stretch of heights; empty when it ends below its beginning. */
type Heights = readonly [from: number, to: number];

const NOWHERE: Heights = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];

/** The part of a stretch where `at + z·slope` is 0 or more. */
function whereHeld([from, to]: Heights, at: number, slope: number): Heights {
  if (slope === 0) return at >= 0 ? [from, to] : NOWHERE;
  const turn = -at / slope;
  return slope > 0 ? [Math.max(from, turn), to] : [from, Math.min(to, turn)];
}

/** The heights at which the line of centres lies within both swings: one stretch, as both sides of it run straight. */
function facing(pair: Pair, mainSwing: number, vaneSwing: number): Heights {
  const { from, to, along, alongSlope, across, acrossSlope } = pair;
  const swing = Math.min(mainSwing, vaneSwing);
  const reach = swing >= 90 ? 0 : 1;
  const steep = swing >= 90 ? 1 : tan(swing);
  const aft = whereHeld([from, to], along, alongSlope);
  const toStarboard = whereHeld(
    aft,
    steep * along - reach * across,
    steep * alongSlope - reach * acrossSlope,
  );
  return whereHeld(toStarboard, steep * along + reach * across, steep * alongSlope + reach * acrossSlope);
}

/**
 * Whether no point of the auxiliary rudder's after part can come nearer to the other axis than its own axis is, at any
 * height: the line of centres and the swing then make no more than a right angle.
 */
function staysBehind({ from, to, along, alongSlope, across, acrossSlope }: Pair, vaneSwing: number): boolean {
  const [c, s] = [cos(vaneSwing), sin(vaneSwing)];
  const held = (z: number): boolean => (along + z * alongSlope) * c >= Math.abs(across + z * acrossSlope) * s;
  // What is held at both ends is held between them: a straight line less a convex one.
  return held(from) && held(to);
}

/** Least distance, mm, of what the boat's own rudder sweeps from one part of the other, which opens aft or forward. */
function leastOfSwept(
  pair: Pair,
  [from, to]: Heights,
  mainSwing: number,
  vaneSwing: number,
  opens: 1 | -1,
  reach: number,
): number {
  const main: Sector = { x: 0, y: 0, ux: 1, uy: 0, c: cos(mainSwing), s: sin(mainSwing), r: 0 };
  const vane: Sector = { x: 0, y: 0, ux: opens, uy: 0, c: cos(vaneSwing), s: sin(vaneSwing), r: reach };
  // Each part and the main rudder are convex bodies in plan and height, so their distance is convex in height.
  return leastConvex(
    (z) => {
      main.r = pair.chord + z * pair.chordSlope;
      vane.x = pair.along + z * pair.alongSlope;
      vane.y = pair.across + z * pair.acrossSlope;
      return sectorDistance(main, vane);
    },
    from,
    to,
  );
}

/** Closest approach to the auxiliary rudder's part ahead of its axis, mm. */
function leastAhead(pair: Pair, mainSwing: number, vaneSwing: number, balance: number): number {
  const { from, to } = pair;
  const [first, last] = facing(pair, mainSwing, vaneSwing);
  const aside = (heights: Heights): number => leastOfSwept(pair, heights, mainSwing, vaneSwing, -1, balance);
  if (first > last) return aside([from, to]);
  let least = leastRadialGap(pair, first, last) - balance;
  if (first > from) least = Math.min(least, aside([from, first]));
  if (last < to) least = Math.min(least, aside([last, to]));
  return least;
}

/**
 * Closest approach of the two swinging chord lines over the heights the rudders share, mm: the lesser of that to the
 * auxiliary rudder's part ahead of its axis and that to its part behind. Ahead, where the line of centres lies within
 * both swings, it is the distance of the axes less both reaches, which may be negative; elsewhere, and behind, it is
 * the distance of the swept sectors, 0 where the rudders can cross. No answer where the boat's own rudder has no length
 * aft of its axis.
 */
export function rudderGapSwung(
  mainSwing: number,
  vaneSwing: number,
  chord: number,
  balance: number,
  ...given: PairGiven
): Answer {
  const pair = sharedPair(given);
  if (pair instanceof NoAnswer) return pair;
  const chordAt = (z: number): number => pair.chord + z * pair.chordSlope;
  if (Math.min(chordAt(pair.from), chordAt(pair.to)) <= HAIR) {
    return new NoAnswer(
      "The after edge of the boat's own rudder is not aft of its turning axis, where the two rudders share a height.",
    );
  }
  const ahead = leastAhead(pair, mainSwing, vaneSwing, balance);
  // The main rudder stays within its reach, so a part that stays behind its axis is no nearer than the part ahead.
  const [first, last] = facing(pair, mainSwing, vaneSwing);
  if (first === pair.from && last === pair.to && staysBehind(pair, vaneSwing)) return ahead;
  const behind = leastOfSwept(pair, [pair.from, pair.to], mainSwing, vaneSwing, 1, chord - balance);
  return Math.min(ahead, behind);
}

export const rudderGapSwungRecord = record({
  id: 'RUDDER_GAP_SWUNG',
  title: 'Between the two rudders, each swung to its worst',
  arguments: [
    { name: 'main_swing', unit: 'deg', meaning: "The hard-over angle of the boat's own rudder", least: 0 },
    { name: 'vane_swing', unit: 'deg', meaning: "The auxiliary rudder's stop angle", least: 0 },
    { name: 'chord', unit: 'mm', meaning: "The auxiliary rudder's chord", above: 0 },
    { name: 'balance', unit: 'mm', meaning: "The auxiliary rudder's part ahead of the shaft", least: 0 },
    ...pairArguments,
  ],
  unit: 'mm',
  formula:
    'to the part ahead of the shaft: distance of the two axes less both reaches while each can point at the other, else the distance of what they sweep; to the part behind: the distance of what they sweep; the least over the shared heights',
  source: 'plane geometry: distance of two circular sectors',
  example: {
    given: [45, 45, 250, 50, 800, -100, -100, -1100, 20, 60, 280, 520, 300, 45, 700, 45],
    answer: 150,
    tolerance: 1e-9,
    source: 'by hand: at −100 the axes are 400 and 300 apart, so 500 at 36.9°, less 300, less 50',
  },
  run: rudderGapSwung,
});
