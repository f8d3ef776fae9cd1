import { cos, sin, tan } from '../angle.ts';
import { type Answer, NoAnswer } from '../answer.ts';
import { record } from '../record.ts';
import { leastConvex } from './least-convex.ts';
import { leastRadialGap, type Pair, type PairGiven, pairArguments, sharedPair } from './pair.ts';
import { type Sector, sectorDistance } from './sector.ts';

/** A chord that tapers to the turning axis comes out of the interpolation a rounding either side of 0, mm. */
const HAIR = 1e-9;

/** Fore-and-aft distance of the axes from which on the line of centres lies within both swings, mm. */
function facingFrom(offset: number, mainSwing: number, vaneSwing: number): number {
  const swing = Math.min(mainSwing, vaneSwing);
  if (offset === 0 || swing >= 90) return 0;
  return swing === 0 ? Number.POSITIVE_INFINITY : Math.abs(offset) / tan(swing);
}

/** Least distance of the swept sectors over heights where the line of centres is outside a swing, mm. */
function leastAside(
  pair: Pair,
  from: number,
  to: number,
  mainSwing: number,
  vaneSwing: number,
  chord: number,
  balance: number,
): number {
  const main: Sector = { x: 0, y: 0, ux: 1, uy: 0, c: cos(mainSwing), s: sin(mainSwing), r: 0 };
  const vane: Sector = { x: 0, y: pair.offset, ux: 1, uy: 0, c: cos(vaneSwing), s: sin(vaneSwing), r: 0 };
  const part = (direction: number, r: number): number => {
    vane.ux = direction;
    vane.r = r;
    // Each part and the main rudder are convex bodies in plan and height, so their distance is convex in height.
    return leastConvex(
      (z) => {
        main.r = pair.chord + z * pair.chordSlope;
        vane.x = pair.along + z * pair.alongSlope;
        return sectorDistance(main, vane);
      },
      from,
      to,
    );
  };
  return Math.min(part(-1, balance), part(1, chord - balance));
}

/**
 * Closest approach of the two swinging chord lines over the heights the rudders share, mm. Where the line of centres
 * lies within both swings the answer is the distance of the axes less both reaches, which may be negative; elsewhere
 * it is the distance of the swept sectors, 0 where the rudders can cross. No answer where the boat's own rudder has no
 * length aft of its axis. As defined, the auxiliary rudder's after part does not count while the line of centres lies
 * within both swings: with a stop angle beyond 45° and a shaft far off the centreline it may come nearer than this.
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
  const facing = facingFrom(pair.offset, mainSwing, vaneSwing);
  const alongAt = (z: number): number => pair.along + z * pair.alongSlope;
  const facesAtFrom = alongAt(pair.from) >= facing;
  const facesAtTo = alongAt(pair.to) >= facing;
  if (facesAtFrom && facesAtTo) return leastRadialGap(pair) - balance;
  const aside = (from: number, to: number): number =>
    leastAside(pair, from, to, mainSwing, vaneSwing, chord, balance);
  if (!facesAtFrom && !facesAtTo) return aside(pair.from, pair.to);
  const turn = (facing - pair.along) / pair.alongSlope;
  return facesAtFrom
    ? Math.min(leastRadialGap(pair, pair.from, turn) - balance, aside(turn, pair.to))
    : Math.min(aside(pair.from, turn), leastRadialGap(pair, turn, pair.to) - balance);
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
    'distance of the two axes less both reaches while each can point at the other, else the distance of what they sweep; the least over the shared heights',
  source: 'plane geometry: distance of two circular sectors',
  example: {
    given: [45, 45, 250, 50, -50, -950, -100, -1100, 0, 0, 300, 100, 300, 0, 300],
    answer: 150,
    tolerance: 1e-9,
    source: 'by hand: axes 500 apart at 36.9°, less 300, less 50',
  },
  run: rudderGapSwung,
});
