import { tan } from '../angle.ts';
import { type Answer, NoAnswer } from '../answer.ts';
import { record, type Table } from '../record.ts';

/** What turns about the shaft: a circle of a radius, between two heights. */
interface Sweep {
  readonly from: number;
  readonly to: number;
  readonly radius: number;
  /** The axis: x and y at a height, and how fast it leans aft and to starboard. */
  readonly x: number;
  readonly y: number;
  readonly at: number;
  readonly aft: number;
  readonly side: number;
}

const clamp = (value: number, low: number, high: number): number => Math.max(low, Math.min(high, value));

/** Distance from what sweeps to one upright obstacle, mm; negative by how far the circle reaches into it. */
function distance(sweep: Sweep, [x = 0, y = 0, foot = 0, head = 0, half = 0]: readonly number[]): number {
  const [lower, upper] = [Math.min(foot, head), Math.max(foot, head)];
  const below = Math.max(sweep.from, Math.min(lower, sweep.to));
  const above = Math.min(sweep.to, Math.max(upper, sweep.from));
  const [low, high] = [Math.min(below, above), Math.max(below, above)];
  // In plan the axis is a line, or a point when it stands upright: the obstacle's foot of the perpendicular on it.
  const slope = sweep.aft ** 2 + sweep.side ** 2;
  const level =
    slope === 0 ? low : sweep.at + ((x - sweep.x) * sweep.aft + (y - sweep.y) * sweep.side) / slope;
  const rise = clamp(level, low, high) - sweep.at;
  const away =
    Math.hypot(sweep.x + rise * sweep.aft - x, sweep.y + rise * sweep.side - y) - sweep.radius - half;
  const apart = Math.max(0, lower - sweep.to, sweep.from - upper);
  return apart === 0 ? away : Math.hypot(Math.max(0, away), apart);
}

/** Least distance from what sweeps about the shaft to any obstacle, mm; negative where it strikes. */
export function airClear(
  from: number,
  to: number,
  radius: number,
  y: number,
  shaftX: number,
  lowerBracket: number,
  lean: number,
  obstacles: Table,
  sideLean = 0,
): Answer {
  if (from > to) return new NoAnswer('The lower edge of what turns is above its upper edge.');
  if (obstacles.length === 0) return new NoAnswer('No obstacle has been put in.');
  const sweep = { from, to, radius, x: shaftX, y, at: lowerBracket, aft: tan(lean), side: tan(sideLean) };
  return Math.min(...obstacles.map((row) => distance(sweep, row)));
}

export const airClearRecord = record({
  id: 'AIR_CLEAR',
  title: 'What turns above to the nearest obstacle',
  arguments: [
    { name: 'from', unit: 'mm', meaning: 'The lowest height of what turns' },
    { name: 'to', unit: 'mm', meaning: 'The greatest height of what turns' },
    { name: 'radius', unit: 'mm', meaning: 'How far it reaches from the axis', least: 0 },
    { name: 'y', unit: 'mm', meaning: "The axis's y at the lower bracket" },
    { name: 'shaft_x', unit: 'mm', meaning: "The axis's x at the lower bracket" },
    { name: 'lower_bracket_height', unit: 'mm', meaning: "The lower bracket's height" },
    { name: 'lean', unit: 'deg', meaning: "The shaft's lean fore and aft" },
    {
      name: 'obstacles',
      unit: 'mm',
      meaning: 'The obstacles: aft of the mark, to starboard, foot, head, half thickness',
      type: 'table',
    },
    { name: 'side_lean', unit: 'deg', meaning: "The shaft's lean to starboard", default: 0 },
  ],
  unit: 'mm',
  formula:
    'the least, over the obstacles, of the level distance from the axis less radius and half thickness; where they share no height, the slant distance',
  source: 'solid geometry',
  example: {
    given: [1000, 1000, 200, 30, 100, 500, 45, [[300, 930, 800, 1200, 25]], 45],
    answer: 275,
    tolerance: 1e-9,
    source: 'by hand: 500 up the axis is at 600 and 530; 300 and 400 make 500, less 200 and 25',
  },
  run: airClear,
});
