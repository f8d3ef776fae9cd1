import { type Answer, NoAnswer } from '../answer.ts';
import { record } from '../record.ts';
import { roundModulus } from '../section/tube.ts';
import { boltSize, coreDiameter, diameterArgument } from './iso.ts';

/** Bending stress in a bolt's core once friction is lost and half the packing is its lever, MPa. */
export function shimBoltBending(shear: number, packing: number, diameter: number): Answer {
  const size = boltSize(diameter);
  return size instanceof NoAnswer ? size : (shear * 0.5 * packing) / roundModulus(coreDiameter(size));
}

export const shimBoltBendingRecord = record({
  id: 'SHIM_BOLT_BENDING',
  title: 'Bending in a bolt across the shims, once friction is lost',
  arguments: [
    { name: 'shear', unit: 'N', meaning: "The bolt's shear" },
    { name: 'packing', unit: 'mm', meaning: 'The packing’s thickness', least: 0 },
    diameterArgument,
  ],
  unit: 'MPa',
  formula: 'shear × half the packing over the section modulus of the thread’s core',
  source: 'elementary bending; core diameter d − 1.22687 × pitch, ISO 724',
  example: {
    given: [1000, 20, 10],
    answer: 10000 / ((Math.PI * (10 - 1.840305) ** 3) / 32),
    tolerance: 1e-9,
    source: 'ISO 724 by hand: core 8.159695 mm',
  },
  run: shimBoltBending,
});
