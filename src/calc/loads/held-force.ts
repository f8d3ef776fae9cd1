import { type Answer, NoAnswer } from '../answer.ts';
import { record } from '../record.ts';

/**
 * The force on the blade once two clamps hold the tube, N. No answer when the upper clamp is not above the lower one,
 * the lower clamp's centre is below the bottom bearing, or the upper clamp's centre is past the tube's top.
 */
export function heldForce(force: number, lowerArm: number, spacing: number, shaftLength: number): Answer {
  if (!(spacing > 0))
    return new NoAnswer('The upper bracket is not above the lower one, so nothing holds the shaft.');
  if (lowerArm < 0) return new NoAnswer('The lower clamp sits below the bottom bearing, off the tube.');
  if (lowerArm + spacing > shaftLength)
    return new NoAnswer('The upper clamp sits above the top of the tube.');
  return force;
}

export const heldForceRecord = record({
  id: 'HELD_FORCE',
  title: 'Force on the blade while two clamps hold the tube',
  arguments: [
    { name: 'force', unit: 'N', meaning: 'The force on the blade' },
    { name: 'lower_arm', unit: 'mm', meaning: 'From the bottom bearing up to the lower clamp’s centre' },
    { name: 'spacing', unit: 'mm', meaning: 'Between the clamp centres' },
    { name: 'shaft_length', unit: 'mm', meaning: "The tube's length", above: 0 },
  ],
  unit: 'N',
  formula: 'the force itself, when both clamps are on the tube, the upper one above the lower',
  source: 'a beam needs two supports',
  example: {
    given: [2000, 150, 550, 1000],
    answer: 2000,
    tolerance: 0,
    source: 'by hand: 150 + 550 is within 1000',
  },
  run: heldForce,
});
