import { record } from '../record.ts';
import { diameterArgument } from './iso.ts';

/** What is left of a bolt's shear strength with packing of thickness t under the flange: 1 down to 0. */
export const packingFactor = (diameter: number, packing: number): number =>
  packing <= diameter / 3 ? 1 : Math.min(1, (9 * diameter) / (8 * diameter + 3 * packing));

export const packingFactorRecord = record({
  id: 'PACKING_FACTOR',
  title: "What packing leaves of a bolt's shear strength",
  arguments: [
    diameterArgument,
    { name: 'packing', unit: 'mm', meaning: 'The packing’s thickness', least: 0 },
  ],
  unit: '–',
  formula: '1 up to a third of the diameter, then 9d/(8d + 3t)',
  source: 'EN 1993-1-8, 3.6.1(12), written for steel packing: with plastic a floor, not a proof',
  example: {
    given: [12, 48],
    answer: 0.45,
    tolerance: 1e-12,
    source: 'EN 1993-1-8 3.6.1(12) by hand: 108/(96 + 144)',
  },
  run: packingFactor,
});
