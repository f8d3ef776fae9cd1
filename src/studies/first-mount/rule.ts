import type { Readings } from './ask.ts';
import { footAside, footHeight, levelHeight, within } from './feet.ts';
import type { Grid } from './grid.ts';
import type { Stack } from './stacks.ts';

const rad = Math.PI / 180;

/** Share of the blade's span that more of it is under water than asked for: on the very bound a yes is as near as a no. */
const DEEPER = 0.005;

/** What decides a mount: the rule makes every choice of it from these and from the readings. */
export interface Sketch {
  readonly struts: 1 | 2;
  readonly stack: Stack;
  /** Heights of the two brackets, mm. */
  readonly lower: number;
  readonly upper: number;
  /** Where the shaft's foot stands between the lowest and the highest place that the readings leave it, 0 to 1. */
  readonly foot: number;
  /** Where the struts' spread lies between the least and the greatest allowed, 0 to 1. */
  readonly spread: number;
  /** How much lower the struts' feet are than level struts would have them, mm. */
  readonly drop: number;
}

/** Heights between which the shaft's foot keeps bearing gap, immersion and the drive unit's room; they may have crossed. */
export function footRange(
  { lower, upper }: Pick<Sketch, 'lower' | 'upper'>,
  by: Readings,
): readonly [low: number, high: number] {
  const half = by.lower_clamp_depth / 2;
  const above = by.upper_clamp_depth / 2 + by.drive_gap_min + by.drive_overlap;
  const immersed = by.vane_rudder_drop + by.vane_rudder_span * Math.max(0, 1 - by.immersion_min - DEEPER);
  return [
    Math.max(lower - half - by.bearing_gap_max, upper + above - by.shaft_length),
    Math.min(lower - half - by.bearing_gap_min, immersed),
  ];
}

/** The highest place of the upper bracket that leaves the drive unit its room over a lower bracket. */
export function highestUpper(lower: number, by: Readings): number {
  const [, foot] = footRange({ lower, upper: lower }, by);
  return foot + by.shaft_length - by.upper_clamp_depth / 2 - by.drive_gap_min - by.drive_overlap;
}

/** How far the upright shaft's axis is aft of where the face meets the water, mm. */
function shaftX({ stack, lower }: Sketch, by: Readings, wedge: number): number {
  const rake = Math.tan(by.transom_rake * rad);
  const packed = (stack.count * stack.sheet) / Math.cos(by.transom_rake * rad);
  const wedged = by.lower_flange_hinged === 1 ? 0 : wedge + (by.lower_flange_height / 2) * Math.abs(rake);
  return lower * rake + packed + wedged + by.lower_reach;
}

/**
 * Every choice of a mount, in the order of `MADE`: the shaft upright on the centreline, the feet level with the clamp or
 * by a drop lower, as far apart as the struts are to spread. A wedge has a thin edge only where the flange is not hinged.
 */
export function placed(sketch: Sketch, by: Readings, wedge: number, grid: Grid): number[] {
  const { struts, stack, lower, upper, foot, spread, drop } = sketch;
  const [low, high] = footRange(sketch, by);
  const pinX = shaftX(sketch, by, wedge) - by.pin_forward;
  const z = grid.near(footHeight(levelHeight(upper, by) - drop, by));
  const angle = by.spread_min + spread * (by.spread_max - by.spread_min);
  const y = grid.near(footAside(angle, pinX, z, by));
  const shaftFoot = grid.between(within(low + foot * (high - low), low, high), low, high);
  const thinEdge = by.lower_flange_hinged === 1 ? 0 : wedge;
  const [offset, lean] = [0, 0];
  const shims = [stack.count, stack.sheet];
  return [struts, ...shims, thinEdge, offset, lean, shaftFoot, lower, upper, 0 - y, z, y, z, offset, z];
}
