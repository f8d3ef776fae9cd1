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

const plateArguments: readonly Argument[] = [
  { name: 'plate_area', unit: 'mm²', meaning: "The plate's area under one bolt", above: 0 },
  { name: 'bolt_spacing', unit: 'mm', meaning: "The flange's bolt spacing", above: 0 },
];

/** Diameter over which a plate spreads a bolt's pull, mm: no further than to the next bolt's, so none counts twice. */
function spreadDiameter(
  diameter: number,
  thickness: number,
  yieldStress: number,
  bears: number,
  boltSpacing: number,
): Answer {
  const size = boltSize(diameter);
  if (size instanceof NoAnswer) return size;
  if (boltSpacing <= diameter) {
    return new NoAnswer(`Bolts of ${diameter} mm cannot stand ${boltSpacing} mm apart.`);
  }
  return Math.min(boltSpacing, size.washerDiameter + 2 * plateReach(thickness, yieldStress, bears));
}

/** Area of a ring round a bolt, mm². */
const ringArea = (across: number, diameter: number): number =>
  (Math.PI / 4) * (across * across - diameter * diameter);

/** Diameter of the round plate that has an area and the bolt's hole in it, mm. */
const roundPlate = (area: number, diameter: number): number =>
  Math.sqrt((4 * area) / Math.PI + diameter * diameter);

/** Share of what the laminate bears under the backing plate. */
export function plateShare(
  tension: number,
  diameter: number,
  thickness: number,
  yieldStress: number,
  bears: number,
  area: number,
  boltSpacing: number,
): Answer {
  const spread = spreadDiameter(diameter, thickness, yieldStress, bears, boltSpacing);
  return typeof spread === 'number' ? tension / Math.min(area, ringArea(spread, diameter)) / bears : spread;
}

/**
 * Share of what the skin bears in shear round the spread of a bolt's pull, or round the plate's own edge where that is
 * nearer.
 */
export function skinShare(
  tension: number,
  diameter: number,
  thickness: number,
  yieldStress: number,
  bears: number,
  skin: number,
  shear: number,
  area: number,
  boltSpacing: number,
): Answer {
  const spread = spreadDiameter(diameter, thickness, yieldStress, bears, boltSpacing);
  if (typeof spread !== 'number') return spread;
  return tension / (Math.PI * Math.min(spread, roundPlate(area, diameter)) * skin * shear);
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
    ...plateArguments,
  ],
  unit: '–',
  formula:
    'pull over the smaller of plate area and the ring the plate spreads it to, which reaches no further than half-way to the next bolt, over what the laminate bears',
  source: 'EN 1993-1-8, 6.2.5; washer ISO 7089',
  example: {
    given: [10000, 12, 8, 270, 10, 9000, 60],
    answer: 10000 / ((Math.PI / 4) * (60 * 60 - 144)) / 10,
    tolerance: 1e-12,
    source: 'by hand: 24 + 2 × 24 = 72 mm, held to the 60 mm between the bolts',
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
    ...plateArguments,
  ],
  unit: '–',
  formula:
    'pull over the circumference of its spread, or of the plate where that is smaller, × skin × shear strength',
  source: 'punching shear round the spread of EN 1993-1-8, 6.2.5',
  example: {
    given: [Math.PI * 1000, 12, 8, 270, 10, 18, 5, (Math.PI / 4) * (50 * 50 - 144), 140],
    answer: 1000 / (50 * 18 * 5),
    tolerance: 1e-12,
    source: 'by hand: a plate of 50 mm is narrower than the spread of 24 + 2 × 24 mm',
  },
  run: skinShare,
});
