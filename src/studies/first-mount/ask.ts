import type { InputName } from '../../plan/names.ts';
import type { Step } from '../../units/next-step.ts';
import type { Road } from '../points.ts';
import type { Loosened } from '../proposals/ask.ts';

/** Readings of boat and gear that a first mount is placed by; every limit judges what it comes to. */
export const PLACED_BY = [
  'transom_rake',
  'transom_camber_radius',
  'transom_top',
  'transom_bottom',
  'transom_half_breadth',
  'shaft_length',
  'bearing_gap_min',
  'bearing_gap_max',
  'lower_clamp_depth',
  'upper_clamp_depth',
  'drive_overlap',
  'drive_gap_min',
  'lower_reach',
  'lower_flange_height',
  'lower_flange_hinged',
  'shim_stack_max',
  'pin_forward',
  'pin_half_width',
  'foot_standoff',
  'foot_width',
  'foot_height',
  'spread_min',
  'spread_max',
  'vane_rudder_drop',
  'vane_rudder_span',
  'immersion_min',
] as const satisfies readonly InputName[];

/** Their values in base units, yes as 1 and no as 0. */
export type Readings = Readonly<Record<(typeof PLACED_BY)[number], number>>;

/** Every choice that a first mount makes, in the order in which its values stand. */
export const MADE = [
  'strut_count',
  'shim_count',
  'shim_thickness',
  'wedge_edge',
  'shaft_offset',
  'shaft_lean',
  'shaft_foot_height',
  'lower_bracket_height',
  'upper_bracket_height',
  'port_foot_y',
  'port_foot_height',
  'starboard_foot_y',
  'starboard_foot_height',
  'single_foot_y',
  'single_foot_height',
] as const satisfies readonly InputName[];

/** Thicknesses that a mount is made up from, and the grid it stands on. */
export interface Stock {
  /** Heights and distances to the side are multiples of it. */
  readonly step: Step;
  /** Of one sheet for shims, mm; the first is preferred. */
  readonly sheets: readonly number[];
  /** Of a wedge's thin edge, mm. */
  readonly wedge: number;
}

export interface FirstMountAsk extends Stock {
  readonly scenario: string | null;
  readonly readings: Readings;
  /** Which inputs decide each limit. */
  readonly decides: ReadonlyMap<string, ReadonlySet<string>>;
  /** Limits that say whether a mount can be built at all; they count for more than any other. */
  readonly built: ReadonlySet<string>;
  /** What might be given way on when no mount holds. */
  readonly loosened: readonly Loosened[];
}

/** A mount as it was judged. */
export interface MadeMount {
  /** Values of `MADE`. */
  readonly values: readonly number[];
  /** Limits that fail there. */
  readonly failing: readonly string[];
}

/** Limits that no mount keeps, as far as mounts were looked at. */
export interface Conflict {
  readonly limits: readonly string[];
  /**
   * Of one limit that no choice of the mount has a part in; of limits each of which fails at every mount; or of limits
   * that no mount keeps together.
   */
  readonly how: 'no choice' | 'each alone' | 'together';
  /** Whether any fewer of them are kept together by some mount. */
  readonly isSmallest: boolean;
  /** Single changes after which some mount keeps them and fails no limit that no conflict names; the least first. */
  readonly frees: readonly Freeing[];
}

export interface Freeing {
  readonly name: string;
  readonly from: number;
  readonly to: number;
}

export interface FirstMount {
  /** The mount with the most room of those that keep every limit; else the one that comes nearest to it. */
  readonly mount: MadeMount;
  /** Empty when the mount keeps every limit. */
  readonly conflicts: readonly Conflict[];
  /** Mounts looked at. */
  readonly looked: number;
  /** Not all was looked at that was to be: another mount may do better. */
  readonly unfinished?: true;
  readonly road: Road;
}
