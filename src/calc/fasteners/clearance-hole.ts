import { type Answer, NoAnswer } from '../answer.ts';
import { record } from '../record.ts';
import { boltSize, diameterArgument } from './iso.ts';

/** The hole for a bolt, medium series, mm. */
export function clearanceHole(diameter: number): Answer {
  const size = boltSize(diameter);
  return size instanceof NoAnswer ? size : size.hole;
}

export const clearanceHoleRecord = record({
  id: 'CLEARANCE_HOLE',
  title: 'Hole for a through bolt',
  arguments: [diameterArgument],
  unit: 'mm',
  formula: 'the medium series of ISO 273',
  source: 'ISO 273, medium series',
  example: { given: [12], answer: 13.5, tolerance: 0, source: 'ISO 273, medium series, M12' },
  run: clearanceHole,
});
