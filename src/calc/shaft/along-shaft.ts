import { cos } from '../angle.ts';
import { record } from '../record.ts';

/** Distance along a leaning shaft between two heights, mm; negative when the second is lower. */
export const alongShaft = (from: number, to: number, lean: number): number => (to - from) / cos(lean);

export const alongShaftRecord = record({
  id: 'ALONG_SHAFT',
  title: 'Distance along the shaft',
  arguments: [
    { name: 'from', unit: 'mm', meaning: 'The first height' },
    { name: 'to', unit: 'mm', meaning: 'The second height' },
    { name: 'lean', unit: 'deg', meaning: "The shaft's lean" },
  ],
  unit: 'mm',
  formula: 'difference of the heights over the cosine of the lean',
  source: 'plane geometry',
  example: { given: [100, 600, 60], answer: 1000, tolerance: 1e-9, source: 'cos 60° = ½' },
  run: alongShaft,
});
