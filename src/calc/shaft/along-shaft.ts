import { record } from '../record.ts';
import { leanArgument, sideLeanArgument, uprightPart } from './upright-part.ts';

/** Distance along a leaning shaft between two heights, mm; negative when the second is lower. */
export const alongShaft = (from: number, to: number, lean: number, sideLean = 0): number =>
  (to - from) / uprightPart(lean, sideLean);

export const alongShaftRecord = record({
  id: 'ALONG_SHAFT',
  title: 'Distance along the shaft',
  arguments: [
    { name: 'from', unit: 'mm', meaning: 'The first height' },
    { name: 'to', unit: 'mm', meaning: 'The second height' },
    leanArgument,
    sideLeanArgument,
  ],
  unit: 'mm',
  formula: 'difference of the heights times √(1 + tan² of the lean + tan² of the lean to starboard)',
  source: 'solid geometry',
  example: {
    given: [100, 600, 45, 60],
    answer: 500 * Math.sqrt(5),
    tolerance: 1e-9,
    source: 'by hand: tan 45° = 1, tan 60° = √3, so √(1 + 1 + 3)',
  },
  run: alongShaft,
});
