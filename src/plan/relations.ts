import { inputNamed } from './book.ts';
import type { Value } from './plan.ts';

/** Two or more inputs that cannot be so together. */
export interface Relation {
  readonly names: readonly [string, string] | readonly [string, string, string];
  /** Whether the values, in the order of the names, can be. */
  readonly holds: (...values: number[]) => boolean;
  /**
   * Values that can be form a convex set where the first is above this or stays as it is; anywhere if left out. When
   * the corners of a box can be, so can all within it.
   */
  readonly convexAbove?: number;
  /** What is wrong and what is allowed. */
  readonly says: string;
}

const wall = (od: string, thickness: string, what: string): Relation => ({
  names: [od, thickness],
  holds: (diameter, wall) => (wall as number) < (diameter as number) / 2,
  says: `the wall of ${what} must be less than half its diameter`,
});

const rising = (low: string, high: string, says: string, mayMeet = false): Relation => ({
  names: [low, high],
  holds: (a, b) => (mayMeet ? (a as number) <= (b as number) : (a as number) < (b as number)),
  says,
});

const camber = (y: string, countOfStruts?: number): Relation => ({
  names:
    countOfStruts === undefined ? ['transom_camber_radius', y] : ['transom_camber_radius', y, 'strut_count'],
  holds: (radius, offset, count) =>
    radius === 0 ||
    (countOfStruts !== undefined && count !== countOfStruts) ||
    (radius as number) > Math.abs(offset as number),
  convexAbove: 0,
  says: 'the camber radius is 0 for a flat face, else it must reach further than that distance from the centreline',
});

const RELATIONS: readonly Relation[] = [
  wall('tube_od', 'tube_wall', 'the shaft tube'),
  wall('strut_od', 'strut_wall', 'a strut'),
  wall('single_strut_od', 'single_strut_wall', 'the single strut'),
  {
    names: ['stock_diameter', 'tube_od', 'tube_wall'],
    holds: (stock, od, thickness) => (stock as number) <= (od as number) - 2 * (thickness as number),
    says: 'the turning stock must fit inside the tube',
  },
  rising('main_rudder_foot', 'main_rudder_head', "the boat's own rudder must have its head above its foot"),
  rising('transom_bottom', 'transom_top', 'the top of the transom must be above its bottom'),
  rising(
    'vane_rudder_balance',
    'vane_rudder_chord',
    'the part ahead of the shaft cannot be more than the whole chord',
    true,
  ),
  rising('bearing_gap_min', 'bearing_gap_max', 'the low bound cannot be above the high one', true),
  rising('spread_min', 'spread_max', 'the low bound cannot be above the high one', true),
  camber('shaft_offset'),
  camber('port_foot_y', 2),
  camber('starboard_foot_y', 2),
  camber('single_foot_y', 1),
];

const described = (name: string, value: Value): string => {
  const cell = inputNamed(name);
  const unit = cell === undefined || cell.unit === '–' ? '' : ` ${cell.unit}`;
  return `${cell?.label ?? name} (${name}) is ${value}${unit}`;
};

/** Names taking part in a relation with any of these. */
export interface Clash {
  readonly names: readonly string[];
  readonly why: string;
}

/** The relations that any of these inputs takes part in. */
export const relationsWith = (names: ReadonlySet<string>): readonly Relation[] =>
  RELATIONS.filter((it) => it.names.some((name) => names.has(name)));

/** The first relation that the values break, naming every input in it; undefined when all hold. */
export function clash(valueAt: (name: string) => Value): Clash | undefined {
  for (const { names, holds, says } of RELATIONS) {
    const values = names.map(valueAt);
    if (!values.every((value) => typeof value === 'number') || holds(...(values as number[]))) continue;
    return {
      names,
      why: `${names.map((name, i) => described(name, values[i] ?? null)).join(' and ')}: ${says}.`,
    };
  }
  return undefined;
}
