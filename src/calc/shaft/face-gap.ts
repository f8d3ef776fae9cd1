import { type Answer, NoAnswer } from '../answer.ts';
import { record } from '../record.ts';
import { faceX } from '../transom/face-x.ts';
import { type Profile, profileArgument, profileKnots } from '../transom/profile.ts';
import { axisX } from './axis-x.ts';

/**
 * Least level distance, mm, from a part that stands `forward` ahead of the shaft's axis to the transom face, over the
 * heights `from` to `to`. Both run straight between the profile's knots, so ends and knots hold the least.
 * No answer when the range of heights is empty.
 */
export function faceGap(
  forward: number,
  from: number,
  to: number,
  y: number,
  shaftX: number,
  lowerBracket: number,
  lean: number,
  rake: number,
  radius: number,
  profile: Profile = [],
): Answer {
  if (from > to) return new NoAnswer('The part and the transom share no height.');
  let least = Number.POSITIVE_INFINITY;
  const heights = profile.length < 2 ? [from, to] : [from, to, ...profileKnots(profile, from, to)];
  for (const z of heights) {
    const face = faceX(y, z, rake, radius, profile);
    if (typeof face !== 'number') return face;
    least = Math.min(least, axisX(z, shaftX, lowerBracket, lean) - forward - face);
  }
  return least;
}

export const faceGapRecord = record({
  id: 'FACE_GAP',
  title: 'Room between a part on the shaft and the transom',
  arguments: [
    { name: 'forward', unit: 'mm', meaning: 'How far the part stands ahead of the axis' },
    { name: 'from', unit: 'mm', meaning: 'The lowest height looked at' },
    { name: 'to', unit: 'mm', meaning: 'The highest height looked at' },
    { name: 'y', unit: 'mm', meaning: "The shaft's distance from the centreline" },
    { name: 'shaft_x', unit: 'mm', meaning: "The axis's x at the lower bracket" },
    { name: 'lower_bracket_height', unit: 'mm', meaning: "The lower bracket's height" },
    { name: 'lean', unit: 'deg', meaning: "The shaft's lean" },
    { name: 'rake', unit: 'deg', meaning: "The transom's rake" },
    { name: 'camber_radius', unit: 'mm', meaning: "The transom's camber radius", least: 0 },
    profileArgument,
  ],
  unit: 'mm',
  formula: 'the least, over the heights, of axis less the part ahead of it less the face',
  source: 'plane geometry',
  example: {
    given: [30, 0, 100, 0, 200, 0, 0, 45, 0],
    answer: 70,
    tolerance: 1e-9,
    source: 'by hand: at 100 mm up a 45° face has come aft by 100',
  },
  run: faceGap,
});
