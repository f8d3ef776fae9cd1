import type { Limit } from './limits.ts';
import type { Values } from './values.ts';

/** A rectangle on the transom: port edge, starboard edge, lower edge, upper edge. */
export interface KeepOut {
  readonly edges: readonly [number, number, number, number];
  /** Behind the face rather than on it. */
  readonly inside: boolean;
  readonly label: string;
}

export type ShownUnit = 'mm' | 'in' | 'both';

/** What every scene may be told beside its values. */
export interface SceneOptions {
  readonly unit: ShownUnit;
  readonly limits?: readonly Limit[];
  /** Another scenario, drawn behind. */
  readonly ghost?: Values;
  /** The choice or part pointed at. */
  readonly lit?: string;
  /** Crops the scene to what this input belongs to. */
  readonly part?: string;
  /** Values at which every part could last be computed. */
  readonly lastGood?: Values;
  /** Why a name has no answer, as a sentence. */
  readonly reasons?: Readonly<Record<string, string>>;
  /** What holes and flanges must keep clear of, as seen from astern, mm. */
  readonly keepOuts?: readonly KeepOut[];
  /** A measured centreline of the transom: rows of height and x, mm. */
  readonly profile?: readonly (readonly [number, number])[];
}
