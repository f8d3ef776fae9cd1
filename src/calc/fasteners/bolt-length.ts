import { type Answer, NoAnswer } from '../answer.ts';
import { record } from '../record.ts';
import { BOLT_LENGTHS, boltSize, diameterArgument } from './iso.ts';

/** Rounding in the sum of a stack must not ask for the next longer bolt, mm. */
const HAIR = 1e-9;

/** What a bolt must reach through: grip, two washers, nut and two threads beyond it, mm. */
export function boltReach(grip: number, diameter: number): Answer {
  const size = boltSize(diameter);
  return size instanceof NoAnswer ? size : grip + 2 * size.washer + size.nut + 2 * size.pitch;
}

/** The next standard bolt length for a grip, mm; no answer past the longest, where threaded rod serves. */
export function boltLength(grip: number, diameter: number): Answer {
  const reach = boltReach(grip, diameter);
  if (typeof reach !== 'number') return reach;
  return (
    BOLT_LENGTHS.find((length) => length >= reach - HAIR) ??
    new NoAnswer(
      `A bolt would have to reach ${reach.toFixed(1)} mm, and standard lengths end at 500: use threaded rod.`,
    )
  );
}

export const boltLengthRecord = record({
  id: 'BOLT_LENGTH',
  title: 'Standard bolt length for a grip',
  arguments: [{ name: 'grip', unit: 'mm', meaning: 'All that the bolt clamps', least: 0 }, diameterArgument],
  unit: 'mm',
  formula: 'the next ISO 888 length at or above grip + 2 washers + nut + 2 pitches',
  source: 'ISO 888, ISO 7089, ISO 4032, ISO 261; two threads beyond the nut, Shigley 9th ed. Ex. 8-7',
  example: {
    given: [87, 12],
    answer: 110,
    tolerance: 0,
    source: 'ISO tables by hand: 87 + 2 × 2.7 + 10.8 + 2 × 1.75 = 106.7, next length 110',
  },
  run: boltLength,
});
