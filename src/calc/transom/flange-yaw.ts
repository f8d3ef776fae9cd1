import { degrees } from '../angle.ts';
import { type Answer, NoAnswer } from '../answer.ts';
import { record } from '../record.ts';

/** Angle of a flange off square on a cambered face, degrees, never negative; 0 on a flat face. */
export function flangeYaw(offset: number, radius: number): Answer {
  if (radius === 0) return 0;
  if (Math.abs(offset) > radius) {
    return new NoAnswer(
      `The shaft is ${Math.abs(offset)} mm off the centreline, further than the camber radius of ${radius} mm.`,
    );
  }
  return degrees(Math.asin(Math.abs(offset) / radius));
}

export const flangeYawRecord = record({
  id: 'FLANGE_YAW',
  title: 'Flange off square on a cambered face',
  arguments: [
    { name: 'offset', unit: 'mm', meaning: "The shaft's distance from the centreline" },
    { name: 'camber_radius', unit: 'mm', meaning: "The transom's camber radius", least: 0 },
  ],
  unit: 'deg',
  formula: 'the angle whose sine is offset over radius; 0 on a flat face',
  source: 'plane geometry: the normal of a circular arc',
  example: { given: [500, 1000], answer: 30, tolerance: 1e-12, source: 'sin 30° = ½' },
  run: flangeYaw,
});
