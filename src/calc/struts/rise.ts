import { degrees } from '../angle.ts';
import { type Answer, NoAnswer } from '../answer.ts';
import { record } from '../record.ts';

/** Angle of a strut from the horizontal, degrees, 0 to 90. */
export function strutRise(x1: number, y1: number, z1: number, x2: number, y2: number, z2: number): Answer {
  const level = Math.sqrt((x2 - x1) ** 2 + (y2 - y1) ** 2);
  const up = Math.abs(z2 - z1);
  if (level === 0 && up === 0) return new NoAnswer('Both pins of the strut are at the same point.');
  return degrees(Math.atan2(up, level));
}

export const strutRiseRecord = record({
  id: 'STRUT_RISE',
  title: 'Slope of a strut',
  arguments: [
    { name: 'x1', unit: 'mm', meaning: 'The first pin’s x' },
    { name: 'y1', unit: 'mm', meaning: 'The first pin’s y' },
    { name: 'z1', unit: 'mm', meaning: 'The first pin’s z' },
    { name: 'x2', unit: 'mm', meaning: 'The second pin’s x' },
    { name: 'y2', unit: 'mm', meaning: 'The second pin’s y' },
    { name: 'z2', unit: 'mm', meaning: 'The second pin’s z' },
  ],
  unit: 'deg',
  formula: 'the angle whose tangent is the difference in height over the level distance',
  source: 'solid geometry',
  example: {
    given: [10, 20, 30, 13, 24, 35],
    answer: 45,
    tolerance: 1e-12,
    source: 'level distance 5, height 5',
  },
  run: strutRise,
});
