import type { Road } from '../points.ts';
import type { Standing } from '../standing.ts';

/** One input varied over a range; which limits are followed. */
export interface TurningAsk {
  readonly scenario: string | null;
  readonly input: string;
  readonly low: number;
  readonly high: number;
  readonly whole: boolean;
  /** The only values a whole-number input can have. */
  readonly only?: readonly number[] | undefined;
  /** Where it stands now; null where it has no value. */
  readonly present: number | null;
  /** Every limit when left out. */
  readonly limits?: readonly string[];
}

/** A value at which a limit goes from one standing to another. */
export interface TurningValue {
  /** Last value found to stand as `from`, first found to stand as `to`. */
  readonly below: number;
  readonly above: number;
  /** Of the two, the one at which it does not fail; the first step that stands otherwise, for whole numbers. */
  readonly at: number;
  readonly from: Standing;
  readonly to: Standing;
}

/** One limit along the range. */
export interface LimitTurns {
  readonly limit: string;
  readonly turns: readonly TurningValue[];
  /** How it stands at the low end. */
  readonly first: Standing;
  /**
   * For a limit that never turns: the least distance from its bound found anywhere in the range, and where; null when
   * it has no room there. Positive while it holds, negative while it is outside.
   */
  readonly closest: { readonly room: number; readonly at: number } | null;
  /**
   * What that distance comes to at least, and no turn has been missed, unless the room is steeper somewhere than twice
   * the steepest slope seen; null where that could not be shown within the evaluations allowed.
   */
  readonly surely: number | null;
  /** Whether its room or standing changes at all along the range, as far as was seen. */
  readonly moved: boolean;
  /** Whether, on the same terms, further turns are ruled out, but for pairs closer than a ten-thousandth of the range. */
  readonly complete: boolean;
}

export interface Turnings {
  readonly road: Road;
  readonly ask: TurningAsk;
  readonly limits: readonly LimitTurns[];
  /** Evaluations it took. */
  readonly evaluations: number;
}
