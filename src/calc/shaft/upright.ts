import { record } from '../record.ts';
import { leanArgument, sideLeanArgument, uprightPart } from './upright-part.ts';

/** Height that a length along the leaning shaft takes up, mm. */
export const upright = (length: number, lean: number, sideLean = 0): number =>
  length * uprightPart(lean, sideLean);

export const uprightRecord = record({
  id: 'UPRIGHT',
  title: 'Height of a length along the shaft',
  arguments: [
    { name: 'length', unit: 'mm', meaning: 'The length along the shaft' },
    leanArgument,
    sideLeanArgument,
  ],
  unit: 'mm',
  formula: 'length over √(1 + tan² of the lean + tan² of the lean to starboard)',
  source: 'solid geometry',
  example: {
    given: [1000, 45, 60],
    answer: 1000 / Math.sqrt(5),
    tolerance: 1e-9,
    source: 'by hand: tan 45° = 1, tan 60° = √3, so √(1 + 1 + 3)',
  },
  run: upright,
});
