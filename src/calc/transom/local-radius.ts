import { tan } from '../angle.ts';
import { type Answer, NoAnswer } from '../answer.ts';
import { record } from '../record.ts';
import { type Profile, profileArgument, profileSlope } from './profile.ts';

/**
 * Radius of the face across a flange that lies on it, mm, seen square to the face; 0 where it is flat. A raked face
 * bends less than its level section does, because the section is cut slantwise.
 */
export function localRadius(
  y: number,
  z: number,
  rake: number,
  radius: number,
  profile: Profile = [],
): Answer {
  if (radius === 0) return 0;
  if (Math.abs(y) >= radius) {
    return new NoAnswer(
      `The transom curves away before ${Math.abs(y)} mm from the centreline: its camber radius is ${radius} mm.`,
    );
  }
  const turn = y / Math.sqrt(radius * radius - y * y);
  const slope = profile.length < 2 ? tan(rake) : profileSlope(z, rake, profile);
  return (radius * Math.hypot(1, turn, slope)) / Math.hypot(1, turn);
}

export const localRadiusRecord = record({
  id: 'LOCAL_CAMBER_RADIUS',
  title: 'Radius of the face under a flange',
  arguments: [
    { name: 'y', unit: 'mm', meaning: "The flange's distance from the centreline" },
    { name: 'z', unit: 'mm', meaning: "The flange's height" },
    { name: 'rake', unit: 'deg', meaning: "The transom's rake" },
    { name: 'camber_radius', unit: 'mm', meaning: "The transom's camber radius", least: 0 },
    profileArgument,
  ],
  unit: 'mm',
  formula:
    'the level radius over the cosine of the angle by which the face’s normal leaves the level; 0 when flat',
  source: 'Meusnier’s theorem on the curvature of slanting sections',
  example: {
    given: [
      600,
      50,
      12,
      1000,
      [
        [10, 20],
        [110, 320],
      ],
    ],
    answer: 2600,
    tolerance: 1e-9,
    source: 'Meusnier by hand: slopes of ¾ across and 3 up, so 1000 × 3.25/1.25',
  },
  run: localRadius,
});
