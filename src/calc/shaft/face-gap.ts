import { tan } from '../angle.ts';
import { type Answer, NoAnswer } from '../answer.ts';
import { record } from '../record.ts';
import { faceX } from '../transom/face-x.ts';
import { type Profile, profileArgument, profileKnots, profileSlope } from '../transom/profile.ts';
import { axisX } from './axis-x.ts';
import { leanArgument, sideLeanArgument } from './upright-part.ts';

/**
 * Where, between two heights, a shaft that leans athwart comes nearest to a cambered face, if between: the camber then
 * falls away as fast as the axis and the face close in on each other.
 */
function nearestBetween(
  from: number,
  to: number,
  slope: number,
  y: number,
  lowerBracket: number,
  lean: number,
  sideSlope: number,
  radius: number,
): number | undefined {
  const steep = (slope - tan(lean)) / sideSlope;
  const across = (radius * steep) / Math.sqrt(1 + steep * steep);
  const z = lowerBracket + (across - y) / sideSlope;
  return z > from && z < to ? z : undefined;
}

/**
 * Least level distance, mm, from a part that stands `forward` ahead of the shaft's axis to the transom face, over the
 * heights `from` to `to`. Both run straight between the profile's knots, so ends and knots hold the least, but where
 * the shaft leans athwart over a cambered face: there it may lie between two of them.
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
  sideLean = 0,
): Answer {
  if (from > to) return new NoAnswer('The part and the transom share no height.');
  const sideSlope = sideLean === 0 ? 0 : tan(sideLean);
  const heights = profile.length < 2 ? [from, to] : [from, ...profileKnots(profile, from, to), to];
  if (radius !== 0 && sideSlope !== 0) {
    for (let i = heights.length - 1; i > 0; i--) {
      const [low, high] = [heights[i - 1] as number, heights[i] as number];
      const slope = profileSlope((low + high) / 2, rake, profile);
      const between = nearestBetween(low, high, slope, y, lowerBracket, lean, sideSlope, radius);
      if (between !== undefined) heights.push(between);
    }
  }
  let least = Number.POSITIVE_INFINITY;
  for (const z of heights) {
    const face = faceX(y + (z - lowerBracket) * sideSlope, z, rake, radius, profile);
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
    leanArgument,
    { name: 'rake', unit: 'deg', meaning: "The transom's rake" },
    { name: 'camber_radius', unit: 'mm', meaning: "The transom's camber radius", least: 0 },
    profileArgument,
    sideLeanArgument,
  ],
  unit: 'mm',
  formula: 'the least, over the heights, of axis less the part ahead of it less the face',
  source: 'solid geometry',
  example: {
    given: [
      ...[30, 100, 100, 20, 200, 40, 45, 12, 100],
      [
        [10, 15],
        [190, 105],
      ],
      45,
    ],
    answer: 210,
    tolerance: 1e-9,
    source: 'by hand: 60 mm up the axis is at 260 aft, 80 aside; the face at 60 less a sagitta of 100 − 60',
  },
  run: faceGap,
});
