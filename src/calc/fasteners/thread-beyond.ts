import { type Answer, NoAnswer } from '../answer.ts';
import { record } from '../record.ts';
import { boltSize, diameterArgument } from './iso.ts';

/** Thread that shows beyond the nut, mm, with the thickest washers and nut that the standards allow. */
export function threadBeyond(length: number, grip: number, diameter: number): Answer {
  const size = boltSize(diameter);
  return size instanceof NoAnswer ? size : length - grip - 2 * size.washer - size.nut;
}

export const threadBeyondRecord = record({
  id: 'THREAD_BEYOND',
  title: 'Thread beyond the nut',
  arguments: [
    { name: 'length', unit: 'mm', meaning: "The bolt's length", above: 0 },
    { name: 'grip', unit: 'mm', meaning: 'All that the bolt clamps', least: 0 },
    diameterArgument,
  ],
  unit: 'mm',
  formula: 'length − grip − 2 washers − nut',
  source: 'ISO 7089, ISO 4032, greatest thicknesses',
  example: {
    given: [110, 87, 12],
    answer: 6.8,
    tolerance: 1e-9,
    source: 'ISO tables by hand: 110 − 87 − 2 × 2.7 − 10.8',
  },
  run: threadBeyond,
});
