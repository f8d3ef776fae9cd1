import { degrees } from '../angle.ts';
import { record } from '../record.ts';
import { type Profile, profileArgument, profileSlope } from './profile.ts';

/** Slope of the face from vertical at height z, degrees: the rake, or the measured profile's own slope there. */
export const faceSlope = (z: number, rake: number, profile: Profile = []): number =>
  profile.length < 2 ? rake : degrees(Math.atan(profileSlope(z, rake, profile)));

export const faceSlopeRecord = record({
  id: 'TRANSOM_FACE_SLOPE',
  title: 'Slope of the transom at a height',
  arguments: [
    { name: 'z', unit: 'mm', meaning: 'The height above the waterline' },
    { name: 'rake', unit: 'deg', meaning: "The transom's rake" },
    profileArgument,
  ],
  unit: 'deg',
  formula: 'the rake of a straight face, or the slope of the measured profile at that height',
  source: 'plane geometry',
  example: {
    given: [
      100,
      -10,
      [
        [20, 10],
        [220, 210],
      ],
    ],
    answer: 45,
    tolerance: 1e-12,
    source: 'by hand: 200 aft in 200 of height',
  },
  run: faceSlope,
});
