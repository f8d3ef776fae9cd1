import { type Argument, record } from '../record.ts';

const held: readonly Argument[] = [
  { name: 'force', unit: 'N', meaning: 'The force on the blade' },
  { name: 'rudder_arm', unit: 'mm', meaning: "From the bottom bearing down to the blade's middle" },
];

const clamps: readonly Argument[] = [
  ...held,
  { name: 'lower_arm', unit: 'mm', meaning: 'From the bottom bearing up to the lower clamp’s centre' },
  { name: 'spacing', unit: 'mm', meaning: 'Between the clamp centres', above: 0 },
];

const tube: readonly Argument[] = [
  ...held,
  { name: 'shaft_length', unit: 'mm', meaning: "The tube's length", above: 0 },
];

/** What the lower clamp holds, N. */
export const lowerReaction = (force: number, rudderArm: number, lowerArm: number, spacing: number): number =>
  (force * (spacing + rudderArm + lowerArm)) / spacing;

/** What the upper clamp holds, the other way, N. */
export const upperReaction = (force: number, rudderArm: number, lowerArm: number, spacing: number): number =>
  (force * (rudderArm + lowerArm)) / spacing;

/** What the stock presses on the bottom bearing, N. */
export const bottomBearingForce = (force: number, rudderArm: number, shaftLength: number): number =>
  (force * (shaftLength + rudderArm)) / shaftLength;

/** What the stock presses on the top bearing, the other way, N. */
export const topBearingForce = (force: number, rudderArm: number, shaftLength: number): number =>
  (force * rudderArm) / shaftLength;

const BEAM = 'beam on two supports with an overhanging load (AISC Manual Table 3-23, from memory; statics)';
const CASE = 'statics of an overhanging beam: 1000 N at 900 mm past a span of 600 mm gives 2500 and 1500 N';

export const lowerReactionRecord = record({
  id: 'LOWER_REACTION',
  title: 'What the lower clamp holds',
  arguments: clamps,
  unit: 'N',
  formula: 'force × (spacing + both arms) over spacing',
  source: BEAM,
  example: { given: [1000, 800, 100, 600], answer: 2500, tolerance: 1e-9, source: CASE },
  run: lowerReaction,
});

export const upperReactionRecord = record({
  id: 'UPPER_REACTION',
  title: 'What the upper clamp holds',
  arguments: clamps,
  unit: 'N',
  formula: 'force × both arms over spacing',
  source: BEAM,
  example: { given: [1000, 800, 100, 600], answer: 1500, tolerance: 1e-9, source: CASE },
  run: upperReaction,
});

export const bottomBearingForceRecord = record({
  id: 'BOTTOM_BEARING_FORCE',
  title: 'What the bottom bearing holds',
  arguments: tube,
  unit: 'N',
  formula: 'force × (tube length + rudder arm) over tube length',
  source: BEAM,
  example: { given: [1000, 900, 600], answer: 2500, tolerance: 1e-9, source: CASE },
  run: bottomBearingForce,
});

export const topBearingForceRecord = record({
  id: 'TOP_BEARING_FORCE',
  title: 'What the top bearing holds',
  arguments: tube,
  unit: 'N',
  formula: 'force × rudder arm over tube length',
  source: BEAM,
  example: { given: [1000, 900, 600], answer: 1500, tolerance: 1e-9, source: CASE },
  run: topBearingForce,
});
