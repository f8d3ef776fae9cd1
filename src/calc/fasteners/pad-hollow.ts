import { type Answer, NoAnswer } from '../answer.ts';
import { record } from '../record.ts';

/** How far a flat flange's edges stand off a curved face when its middle touches, mm: the sagitta; 0 on a flat face. */
export function padHollow(chord: number, radius: number): Answer {
  if (radius === 0) return 0;
  const half = chord / 2;
  if (half > radius) {
    return new NoAnswer(
      `A flange ${chord} mm wide does not lie on a face of ${radius} mm radius: it is wider than the curve.`,
    );
  }
  return (half * half) / (radius + Math.sqrt(radius * radius - half * half));
}

export const padHollowRecord = record({
  id: 'PAD_HOLLOW',
  title: 'Hollow of a pad on a curved face',
  arguments: [
    { name: 'chord', unit: 'mm', meaning: "The flange's width across the curve", least: 0 },
    { name: 'radius', unit: 'mm', meaning: "The face's radius there, 0 when flat", least: 0 },
  ],
  unit: 'mm',
  formula: 'radius less the square root of radius squared less a quarter of the chord squared; 0 when flat',
  source: 'sagitta of a circular arc',
  example: {
    given: [200, 1000],
    answer: 5.01256289338005,
    tolerance: 1e-12,
    source: 'sagitta of a 200 mm chord on R 1000, closed form',
  },
  run: padHollow,
});
