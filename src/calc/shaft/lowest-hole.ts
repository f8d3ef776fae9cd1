import { cos, sin } from '../angle.ts';
import { record } from '../record.ts';

/** Height above the water, with the boat heeled, of the lower of two holes side by side, mm. */
export const lowestHole = (height: number, heel: number, offset: number, spacing: number): number =>
  height * cos(heel) - (Math.abs(offset) + 0.5 * spacing) * sin(heel);

export const lowestHoleRecord = record({
  id: 'LOWEST_HOLE',
  title: 'Lower of two holes above the heeled waterline',
  arguments: [
    { name: 'height', unit: 'mm', meaning: 'The height of the holes' },
    { name: 'heel', unit: 'deg', meaning: 'The angle of heel' },
    { name: 'offset', unit: 'mm', meaning: "The flange's distance from the centreline" },
    { name: 'bolt_spacing', unit: 'mm', meaning: 'The level distance between the bolts' },
  ],
  unit: 'mm',
  formula: 'height times cos(heel), less the outer hole’s distance from the centreline times sin(heel)',
  source: 'rotation in the athwartships plane',
  example: {
    given: [200, 30, 30, 140],
    answer: 123.2050807568877,
    tolerance: 1e-9,
    source: '200·√3/2 − 100·½',
  },
  run: lowestHole,
});
