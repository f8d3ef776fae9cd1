import { tan } from '../angle.ts';
import { record } from '../record.ts';

/** x of the shaft's axis at height z, mm, given its x at the lower bracket. */
export const axisX = (z: number, shaftX: number, lowerBracket: number, lean: number): number =>
  shaftX + (z - lowerBracket) * tan(lean);

export const axisXRecord = record({
  id: 'AXIS_X',
  title: "Where the shaft's axis is",
  arguments: [
    { name: 'z', unit: 'mm', meaning: 'The height above the waterline' },
    { name: 'shaft_x', unit: 'mm', meaning: "The axis's x at the lower bracket" },
    { name: 'lower_bracket_height', unit: 'mm', meaning: "The lower bracket's height" },
    { name: 'lean', unit: 'deg', meaning: "The shaft's lean" },
  ],
  unit: 'mm',
  formula: 'x at the lower bracket plus the height above it times the tangent of the lean',
  source: 'plane geometry',
  example: { given: [350, 200, 250, 45], answer: 300, tolerance: 1e-9, source: 'tan 45° = 1' },
  run: axisX,
});
