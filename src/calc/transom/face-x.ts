import { type Answer, NoAnswer } from '../answer.ts';
import { record } from '../record.ts';
import { type Profile, profileArgument, profileX } from './profile.ts';

/** How far a cambered face has come forward at y, mm: R − √(R² − y²), in the form that keeps its digits. */
export function camber(y: number, radius: number): number {
  if (radius === 0) return 0;
  return (y * y) / (radius + Math.sqrt(radius * radius - y * y));
}

/** x of the transom's outer face at (y, z), mm. */
export function faceX(y: number, z: number, rake: number, radius: number, profile: Profile = []): Answer {
  if (radius !== 0 && Math.abs(y) >= radius) {
    return new NoAnswer(
      `The transom curves away before ${Math.abs(y)} mm from the centreline: its camber radius is ${radius} mm.`,
    );
  }
  return profileX(z, rake, profile) - camber(y, radius);
}

export const faceXRecord = record({
  id: 'TRANSOM_FACE_X',
  title: 'Where the transom face is',
  arguments: [
    { name: 'y', unit: 'mm', meaning: 'The distance from the centreline' },
    { name: 'z', unit: 'mm', meaning: 'The height above the waterline' },
    { name: 'rake', unit: 'deg', meaning: "The transom's rake" },
    { name: 'camber_radius', unit: 'mm', meaning: "The transom's camber radius", least: 0 },
    profileArgument,
  ],
  unit: 'mm',
  formula: 'height times the tangent of the rake, less the sagitta R − √(R² − y²) of a cambered face',
  source: 'plane geometry; sagitta of a circular arc',
  example: {
    given: [
      300,
      120,
      12,
      2500,
      [
        [20, 10],
        [220, 110],
      ],
    ],
    answer: 60 - 18.0652708018288,
    tolerance: 1e-10,
    source: 'half-way between two readings 60 aft, less the sagitta of a 600 mm chord on R 2500, closed form',
  },
  run: faceX,
});
