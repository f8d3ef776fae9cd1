import { type Answer, NoAnswer } from '../answer.ts';
import { type Argument, record } from '../record.ts';
import { boltSize, diameterArgument } from './iso.ts';

/** How far past the washer a backing plate spreads a bolt's pull, mm. */
export const plateReach = (thickness: number, yieldStress: number, bears: number): number =>
  thickness * Math.sqrt(yieldStress / (3 * bears));

const spreadArguments: readonly Argument[] = [
  diameterArgument,
  { name: 'plate_thickness', unit: 'mm', meaning: "The plate's thickness", least: 0 },
  { name: 'plate_yield', unit: 'MPa', meaning: "The plate's yield strength", above: 0 },
  {
    name: 'laminate_strength',
    unit: 'MPa',
    meaning: 'What the laminate bears through its thickness',
    above: 0,
  },
];

/** Diameter over which a plate spreads a bolt's pull, mm. */
function spreadDiameter(diameter: number, thickness: number, yieldStress: number, bears: number): Answer {
  const size = boltSize(diameter);
  return size instanceof NoAnswer
    ? size
    : size.washerDiameter + 2 * plateReach(thickness, yieldStress, bears);
}

/** Share of what the laminate bears under the backing plate. */
export function plateShare(
  tension: number,
  diameter: number,
  thickness: number,
  yieldStress: number,
  bears: number,
  area: number,
): Answer {
  const spread = spreadDiameter(diameter, thickness, yieldStress, bears);
  if (typeof spread !== 'number') return spread;
  return tension / Math.min(area, (Math.PI / 4) * (spread * spread - diameter * diameter)) / bears;
}

/** Share of what the skin bears in shear round the spread of a bolt's pull. */
export function skinShare(
  tension: number,
  diameter: number,
  thickness: number,
  yieldStress: number,
  bears: number,
  skin: number,
  shear: number,
): Answer {
  const spread = spreadDiameter(diameter, thickness, yieldStress, bears);
  return typeof spread === 'number' ? tension / (Math.PI * spread * skin * shear) : spread;
}

export const plateReachRecord = record({
  id: 'PLATE_REACH',
  title: "How far a backing plate spreads a bolt's pull",
  arguments: spreadArguments.slice(1),
  unit: 'mm',
  formula: 'thickness × √(yield over 3 × what the laminate bears)',
  source: 'EN 1993-1-8, 6.2.5',
  example: { given: [8, 270, 10], answer: 24, tolerance: 1e-12, source: 'EN 1993-1-8 6.2.5 by hand: 8 × √9' },
  run: plateReach,
});

export const plateShareRecord = record({
  id: 'PLATE_SHARE',
  title: 'Share of what the laminate bears under the backing plate',
  arguments: [
    { name: 'tension', unit: 'N', meaning: "The bolt's pull" },
    ...spreadArguments,
    { name: 'plate_area', unit: 'mm²', meaning: "The plate's area under one bolt", above: 0 },
  ],
  unit: '–',
  formula:
    'pull over the smaller of plate area and the ring the plate spreads it to, over what the laminate bears',
  source: 'EN 1993-1-8, 6.2.5; washer ISO 7089',
  example: {
    given: [10000, 12, 0, 270, 10, 1000],
    answer: 10000 / ((Math.PI / 4) * (24 * 24 - 144)) / 10,
    tolerance: 1e-12,
    source: 'ISO 7089 by hand: without a plate the 24 mm washer alone',
  },
  run: plateShare,
});

export const skinShareRecord = record({
  id: 'SKIN_SHARE',
  title: 'Share of what the skin bears round a bolt',
  arguments: [
    { name: 'tension', unit: 'N', meaning: "The bolt's pull" },
    ...spreadArguments,
    { name: 'skin', unit: 'mm', meaning: 'The skin that bears', above: 0 },
    { name: 'shear', unit: 'MPa', meaning: 'What the laminate bears in shear', above: 0 },
  ],
  unit: '–',
  formula: 'pull over the circumference of its spread × skin × shear strength',
  source: 'punching shear round the spread of EN 1993-1-8, 6.2.5',
  example: {
    given: [Math.PI * 1000, 12, 8, 270, 10, 10, 5],
    answer: 1000 / (72 * 10 * 5),
    tolerance: 1e-12,
    source: 'by hand: spread 24 + 2 × 24 = 72 mm',
  },
  run: skinShare,
});
