import { cos } from '../angle.ts';
import { record } from '../record.ts';

/** Height that a length along the leaning shaft takes up, mm. */
export const upright = (length: number, lean: number): number => length * cos(lean);

export const uprightRecord = record({
  id: 'UPRIGHT',
  title: 'Height of a length along the shaft',
  arguments: [
    { name: 'length', unit: 'mm', meaning: 'The length along the shaft' },
    { name: 'lean', unit: 'deg', meaning: "The shaft's lean" },
  ],
  unit: 'mm',
  formula: 'length times the cosine of the lean',
  source: 'plane geometry',
  example: { given: [1000, 60], answer: 500, tolerance: 1e-9, source: 'cos 60° = ½' },
  run: upright,
});
