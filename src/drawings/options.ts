import type { Limit } from './limits.ts';
import type { Values } from './values.ts';

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
  /** A measured centreline of the transom: rows of height and x, mm. */
  readonly profile?: readonly (readonly [number, number])[];
}
