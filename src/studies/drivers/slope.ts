import { type Sides, slopesOf } from './stencil.ts';

/** How steeply a limit's room changes with one input, in the room's unit per unit of the input. */
export interface Slope {
  /** Towards smaller and towards larger values; null where the room has no answer on that side. */
  readonly left: number | null;
  readonly right: number | null;
  /** The two sides differ: the room has a kink at the present value. */
  readonly kink: boolean;
  /** How well they are known: the difference between two ways of working them out. */
  readonly within: number;
}

/** Part by which two slopes must agree to be one. */
const SAME = 1e-6;
/** Part of a room's size that rounding may spoil. */
const ROUNDING = 4e-14;

const orNull = (x: number): number | null => (Number.isFinite(x) ? x : null);

/** A room's values at evenly spaced steps to each side. */
export interface Reach {
  readonly sides: Sides;
  readonly step: number;
}

interface Found {
  readonly value: number;
  readonly within: number;
}

/**
 * Of one slope found over ever narrower reaches, the first that the next one bears out; the narrowest when none is,
 * because the room bends that close by.
 */
function bornOut(slopes: readonly number[], noises: readonly number[]): Found {
  let within = Number.POSITIVE_INFINITY;
  for (const [i, slope] of slopes.entries()) {
    const next = slopes[i + 1];
    if (next === undefined) return { value: slope, within };
    within = Math.abs(slope - next);
    if (within <= Math.max(0.1 * SAME * Math.abs(slope), 4 * (noises[i + 1] ?? 0)))
      return { value: slope, within };
  }
  return { value: Number.NaN, within };
}

/**
 * The slopes of one room by one input, from its values over ever narrower reaches. Where both sides agree they are one
 * slope, the one through the middle.
 */
export function slopeOf(reaches: readonly Reach[]): Slope {
  const all = reaches.map(({ sides, step }) => ({ step, ...slopesOf(sides) }));
  const here = Math.abs(reaches[0]?.sides.here ?? 0);
  const size = Math.max(here, ...(reaches[0]?.sides.above ?? []).map(Math.abs).filter(Number.isFinite));
  const noises = all.map(({ step }) => (ROUNDING * size) / step);
  const found = (side: 'left' | 'right' | 'middle'): Found => {
    const it = bornOut(
      all.map((it) => it[side] / it.step),
      noises,
    );
    // A slope that rounding alone would make is none.
    return Math.abs(it.value) <= 10 * (noises[0] ?? 0) ? { ...it, value: 0 } : it;
  };
  const [left, right, middle] = [found('left'), found('right'), found('middle')];
  const apart = Math.abs(right.value - left.value);
  const steepest = Math.max(Math.abs(right.value), Math.abs(left.value));
  const unsure = 10 * Math.min(right.within, left.within);
  if (apart <= Math.max(SAME * steepest, 40 * (noises.at(-1) ?? 0), unsure)) {
    return { left: middle.value, right: middle.value, kink: false, within: middle.within };
  }
  const bothSides = Number.isFinite(right.value) && Number.isFinite(left.value);
  const within = Math.max(...[left.within, right.within].filter(Number.isFinite), 0);
  return { left: orNull(left.value), right: orNull(right.value), kink: bothSides, within };
}

/** The slope that matters where one number has to stand for both sides: the steeper one. */
export function steeper({ left, right }: Slope): number {
  if (left === null || right === null) return left ?? right ?? 0;
  return Math.abs(left) > Math.abs(right) ? left : right;
}
