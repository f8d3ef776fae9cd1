import { degrees } from '../angle.ts';
import { record } from '../record.ts';

/**
 * How far a shaft leans against gravity, degrees, from its distances to a plumb line at two marks. Distances count
 * from the line towards the side that plus means; plus when the top lies further that way.
 */
export const bobLean = (top: number, foot: number, apart: number): number =>
  degrees(Math.atan2(top - foot, apart));

export const bobLeanRecord = record({
  id: 'BOB_LEAN',
  title: 'Lean of the shaft from a plumb bob',
  arguments: [
    { name: 'top', unit: 'mm', meaning: 'From the plumb line to the shaft at the upper mark' },
    { name: 'foot', unit: 'mm', meaning: 'From the plumb line to the shaft at the lower mark' },
    { name: 'apart', unit: 'mm', meaning: 'How far apart the marks are, plumb', above: 0 },
  ],
  unit: 'deg',
  formula: 'the angle whose tangent is the difference of the two over their distance',
  source: 'plane geometry',
  example: { given: [70, 60, 572.8996163], answer: 1, tolerance: 1e-7, source: 'cot 1° = 57.28996163' },
  run: bobLean,
});
