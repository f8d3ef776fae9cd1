import { record } from '../record.ts';

/** Share of the auxiliary rudder's span that is under water, 0 to 1. */
export const immersion = (head: number, foot: number): number =>
  Math.min(1, Math.max(0, -foot / (head - foot)));

export const immersionRecord = record({
  id: 'RUDDER_IMMERSION',
  title: 'Submerged share of the auxiliary rudder',
  arguments: [
    { name: 'head', unit: 'mm', meaning: "The auxiliary rudder's head" },
    { name: 'foot', unit: 'mm', meaning: "The auxiliary rudder's foot" },
  ],
  unit: '–',
  formula: 'depth of the foot over head less foot, held between 0 and 1',
  source: 'plane geometry',
  example: { given: [100, -300], answer: 0.75, tolerance: 1e-12, source: 'by hand: 300 of 400' },
  run: immersion,
});
