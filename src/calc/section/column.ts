import { record } from '../record.ts';
import { tubeSection } from './tube.ts';

/** Critical stress of a column by AISC 360 E3, MPa, for a slenderness length/radius of gyration. */
export function columnStress(slenderness: number, yieldStress: number, modulus: number): number {
  const euler = (Math.PI ** 2 * modulus) / slenderness ** 2;
  return slenderness <= 4.71 * Math.sqrt(modulus / yieldStress)
    ? 0.658 ** (yieldStress / euler) * yieldStress
    : 0.877 * euler;
}

/** Nominal strength of a pin-ended tube in compression, N. */
export function columnStrength(
  length: number,
  od: number,
  wall: number,
  yieldStress: number,
  modulus: number,
): number {
  const { area, radius } = tubeSection(od, wall);
  return columnStress(length / radius, yieldStress, modulus) * area;
}

export const columnStrengthRecord = record({
  id: 'COLUMN_STRENGTH',
  title: 'What a pin-ended tube bears in compression',
  arguments: [
    { name: 'length', unit: 'mm', meaning: 'The length between pins', least: 0 },
    { name: 'od', unit: 'mm', meaning: "The tube's outside diameter", above: 0 },
    { name: 'wall', unit: 'mm', meaning: "The tube's wall", above: 0 },
    { name: 'yield', unit: 'MPa', meaning: 'The yield strength', above: 0 },
    { name: 'modulus', unit: 'MPa', meaning: 'The elastic modulus', above: 0 },
  ],
  unit: 'N',
  formula: '0.658^(Fy/Fe)·Fy·A up to a slenderness of 4.71·√(E/Fy), else 0.877·Fe·A, with K = 1',
  source: 'AISC 360-16/-22, section E3',
  example: {
    given: [800, 33.7, 2, 205, 193000],
    answer: 32487.37,
    tolerance: 0.005,
    source: 'AISC 360 E3 for a tube 33.7 × 2.0 over 800 mm, closed formula',
  },
  run: columnStrength,
});
