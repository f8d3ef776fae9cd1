import { record } from '../record.ts';
import { roundModulus, tubeSection } from './tube.ts';

/** Share of its allowed stress that a solid round bar bears under a moment in N·m. */
export const roundBendingShare = (moment: number, diameter: number, allowed: number): number =>
  (moment * 1000) / roundModulus(diameter) / allowed;

/** Share of its allowed stress that a tube bears under a moment in N·m. */
export const tubeBendingShare = (moment: number, od: number, wall: number, allowed: number): number =>
  (moment * 1000) / tubeSection(od, wall).modulus / allowed;

export const roundBendingShareRecord = record({
  id: 'ROUND_BENDING_SHARE',
  title: 'Share of what a solid round bar bears in bending',
  arguments: [
    { name: 'moment', unit: 'N·m', meaning: 'The bending moment' },
    { name: 'diameter', unit: 'mm', meaning: "The bar's diameter", above: 0 },
    { name: 'allowed', unit: 'MPa', meaning: 'The allowed stress', above: 0 },
  ],
  unit: '–',
  formula: 'moment over the section modulus πd³/32, over the allowed stress',
  source: 'elementary bending of a round bar',
  example: {
    given: [(50 * Math.PI) / 32, 10, 200],
    answer: 0.25,
    tolerance: 1e-12,
    source: 'by hand: modulus 1000π/32 mm³, so 50 MPa of 200',
  },
  run: roundBendingShare,
});

export const tubeBendingShareRecord = record({
  id: 'TUBE_BENDING_SHARE',
  title: 'Share of what a tube bears in bending',
  arguments: [
    { name: 'moment', unit: 'N·m', meaning: 'The bending moment' },
    { name: 'od', unit: 'mm', meaning: "The tube's outside diameter", above: 0 },
    { name: 'wall', unit: 'mm', meaning: "The tube's wall", above: 0 },
    { name: 'allowed', unit: 'MPa', meaning: 'The allowed stress', above: 0 },
  ],
  unit: '–',
  formula: 'moment over the ring’s section modulus, over the allowed stress',
  source: 'elementary bending of a round tube',
  example: {
    given: [900, 60.3, 3.91, 98.0853],
    answer: 1,
    tolerance: 1e-6,
    source: 'tube 60.3 × 3.91 under 900 N·m: 98.0853 MPa, closed formula',
  },
  run: tubeBendingShare,
});
