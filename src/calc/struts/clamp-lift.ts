import { tan } from '../angle.ts';
import { type Answer, NoAnswer } from '../answer.ts';
import { caseArguments, worstCase } from '../loads/cases.ts';
import { type Argument, record } from '../record.ts';
import { type PairPins, pairPinArguments, strutPair, worstForces } from './pair-forces.ts';

const reaction: Argument = { name: 'upper_reaction', unit: 'N', meaning: 'What the upper clamp holds' };

/** Worst vertical force that two sloping struts leave on the clamp, N. */
export function twoStrutLift(
  upperReaction: number,
  dragRatio: number,
  swing: number,
  ...pins: PairPins
): Answer {
  const pair = strutPair(pins);
  return pair instanceof NoAnswer ? pair : worstForces(pair, upperReaction, dragRatio, swing).lift;
}

/** Worst vertical force that a single sloping strut leaves on the clamp, N. */
export const oneStrutLift = (upperReaction: number, dragRatio: number, swing: number, rise: number): number =>
  worstCase(dragRatio, swing, ({ foreAft }) => upperReaction * foreAft) * tan(rise);

export const twoStrutLiftRecord = record({
  id: 'TWO_STRUT_LIFT',
  title: 'Vertical force two sloping struts leave on the clamp',
  arguments: [reaction, ...caseArguments, ...pairPinArguments],
  unit: 'N',
  formula: 'sum of the struts’ vertical parts; the worst of every case and sign',
  source: 'statics',
  example: {
    given: [1000, 0.8, 30, 450, -300, 300, 500, 50, -600, 200, 50, 600, 200],
    answer: 600,
    tolerance: 1e-9,
    source: 'by hand: fore and aft 800 N on struts that rise 300 over 400 aft',
  },
  run: twoStrutLift,
});

export const oneStrutLiftRecord = record({
  id: 'ONE_STRUT_LIFT',
  title: 'Vertical force a sloping strut leaves on the clamp',
  arguments: [reaction, ...caseArguments, { name: 'rise', unit: 'deg', meaning: "The strut's slope" }],
  unit: 'N',
  formula: 'worst fore-and-aft force times the tangent of the slope',
  source: 'statics',
  example: { given: [1000, 0.2, 30, 45], answer: 500, tolerance: 1e-9, source: 'by hand: 1000 × ½ × 1' },
  run: oneStrutLift,
});
