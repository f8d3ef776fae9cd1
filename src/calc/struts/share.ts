import { type Answer, NoAnswer } from '../answer.ts';
import { caseArguments, worstCase } from '../loads/cases.ts';
import { type Argument, record } from '../record.ts';
import { columnStrength, columnStress } from '../section/column.ts';
import { tubeSection } from '../section/tube.ts';
import { type PairPins, pairPinArguments, type Strut, strutPair, worstForces } from './pair-forces.ts';

const reaction: Argument = { name: 'upper_reaction', unit: 'N', meaning: 'What the upper clamp holds' };

const tubeArguments: readonly Argument[] = [
  { name: 'od', unit: 'mm', meaning: "The strut's outside diameter", above: 0 },
  { name: 'wall', unit: 'mm', meaning: "The strut's wall", above: 0 },
  { name: 'yield', unit: 'MPa', meaning: "The strut's yield strength", above: 0 },
  { name: 'modulus', unit: 'MPa', meaning: "The strut's elastic modulus", above: 0 },
  { name: 'safety', unit: '–', meaning: 'The factor on yield and buckling', above: 0 },
];

type TubeGiven = readonly [od: number, wall: number, yieldStress: number, modulus: number, safety: number];

/** Share of what the harder-worked of two struts bears, pulled or pushed, worst of every case and sign. */
export function twoStrutShare(
  upperReaction: number,
  dragRatio: number,
  swing: number,
  od: number,
  wall: number,
  yieldStress: number,
  modulus: number,
  safety: number,
  ...pins: PairPins
): Answer {
  const pair = strutPair(pins);
  if (pair instanceof NoAnswer) return pair;
  const forces = worstForces(pair, upperReaction, dragRatio, swing);
  const section = tubeSection(od, wall);
  const pulled = section.area * yieldStress;
  const pushed = ({ length }: Strut): number =>
    columnStress(length / section.radius, yieldStress, modulus) * section.area;
  return (
    safety *
    Math.max(
      forces.port / Math.min(pulled, pushed(pair.port)),
      forces.starboard / Math.min(pulled, pushed(pair.starboard)),
    )
  );
}

/** Share of what a single strut with rigid hinges bears: bending sideways plus compression fore and aft. */
export function oneStrutShare(
  upperReaction: number,
  dragRatio: number,
  swing: number,
  ...given: [...TubeGiven, pinToPin: number, pinForward: number]
): Answer {
  const [od, wall, yieldStress, modulus, safety, pinToPin, pinForward] = given;
  const bends = (tubeSection(od, wall).modulus * yieldStress) / safety;
  const pushed = columnStrength(pinToPin, od, wall, yieldStress, modulus) / safety;
  // A clamp pin far aft of the axis puts the lever on the other side of the foot; it bends the strut all the same.
  const lever = Math.abs(pinToPin + pinForward);
  return worstCase(
    dragRatio,
    swing,
    ({ sideways, foreAft }) =>
      (upperReaction * sideways * lever) / bends + (upperReaction * foreAft) / pushed,
  );
}

export const twoStrutShareRecord = record({
  id: 'TWO_STRUT_SHARE',
  title: 'Share of what the two struts bear',
  arguments: [reaction, ...caseArguments, ...tubeArguments, ...pairPinArguments],
  unit: '–',
  formula:
    'the axial forces that balance the clamp’s reaction; pull against area × yield, push against AISC 360 E3, each over the factor; the worst',
  source: 'statics; AISC 360-16/-22, section E3',
  example: {
    given: [1000, 0.3, 10, 33.7, 2, 205, 193000, 1.25, 100, 20, 20, 300, -380, -620, 300, -380, 660, 300],
    answer: (875 * 1.25) / 32487.37,
    tolerance: 1e-7,
    source:
      'by hand: 1000 N across and 300 N along two 3-4-5 struts of 800 mm are 625 and 250 N in one; column 32 487.37 N',
  },
  run: twoStrutShare,
});

export const oneStrutShareRecord = record({
  id: 'ONE_STRUT_SHARE',
  title: 'Share of what a single strut bears',
  arguments: [
    reaction,
    ...caseArguments,
    ...tubeArguments,
    { name: 'pin_to_pin', unit: 'mm', meaning: "The strut's length from pin to pin", least: 0 },
    { name: 'pin_forward', unit: 'mm', meaning: 'The clamp pin ahead of the shaft axis' },
  ],
  unit: '–',
  formula:
    'sideways force × (length + pin forward) in bending against yield, plus fore-and-aft force against AISC 360 E3, each over the factor; the worse case',
  source: 'statics; AISC 360-16/-22, section E3',
  example: {
    given: [1000, 0.2, 15, 60.3, 3.91, 196.1706, 200000, 2, 860, 40],
    answer: 1 + 400 / 125808,
    tolerance: 1e-6,
    source:
      'tube 60.3 × 3.91 under 900 N·m: 98.0853 MPa, closed formula; 200 N against AISC 360 E3, 125 808 N, twice over',
  },
  run: oneStrutShare,
});
