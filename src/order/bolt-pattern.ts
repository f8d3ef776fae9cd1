import { type Ask, numbersOf } from './ask.ts';
import type { Place } from './feet.ts';

/** One bolt of a flange: to starboard of its middle, and up it, mm. */
export interface BoltSpot {
  readonly column: 'port' | 'starboard';
  /** Counted from the top, from 1. */
  readonly row: number;
  readonly across: number;
  readonly raised: number;
}

/** A flange as it lies on the transom, seen from astern, mm. */
export interface Flange {
  readonly width: number;
  readonly height: number;
  readonly rows: number;
  readonly bolts: readonly BoltSpot[];
}

const COLUMNS = [
  ['port', -0.5],
  ['starboard', 0.5],
] as const;

/**
 * Where a flange's bolts are. Feet have two columns; the plan holds no distance between their rows, so several rows are
 * spread evenly over the flange's height, to be checked against the foot itself.
 */
export function flangeOf(ask: Ask, place: Place): Flange | { readonly missing: readonly string[] } {
  const it =
    place === 'lower'
      ? numbersOf(ask, 'lower_flange_width', 'lower_flange_height', 'lower_bolt_spacing')
      : numbersOf(ask, 'foot_width', 'foot_height', 'foot_bolt_spacing', 'foot_bolt_count');
  if ('missing' in it) return it;
  const [width, height, spacing, count = 2] = it.got;
  const rows = Math.max(1, Math.round(count / 2));
  const bolts = Array.from({ length: rows }, (_, i) => i).flatMap((i) =>
    COLUMNS.map(([column, share]) => ({
      column,
      row: i + 1,
      across: share * spacing,
      raised: (0.5 - (i + 0.5) / rows) * height,
    })),
  );
  return { width, height, rows, bolts };
}
