import type { Estimate } from '../../calc/uncertainty/interval.ts';
import type { Varied } from '../drivers/varied.ts';
import type { Road } from '../points.ts';

/** One choice that the owner frees: an input, or several that move together. */
export interface Freed {
  readonly name: string;
  /** What each of the inputs is set to: the choice's value, or its mirror image. */
  readonly moves: readonly { readonly input: string; readonly sign: 1 | -1 }[];
  /** Values it may have, rising. */
  readonly values: readonly number[];
  /** A count or a kind: each of its values is looked at as a case of its own. */
  readonly whole: boolean;
}

/** An input that is not the owner's to choose freely, but that might be given way on when nothing holds. */
export interface Loosened {
  readonly name: string;
  readonly present: number;
  /** Values tried, in any order. */
  readonly values: readonly number[];
  /** Size of its usual range, which a change is measured by. */
  readonly span: number;
  /** Limits that follow from it. */
  readonly limits: readonly string[];
}

/** What may be off, for the odds of a mount. */
export interface Readings {
  readonly varied: readonly Varied[];
  /** How far readings with one instrument share their error, 0 to 1. */
  readonly share: number;
  /** Certainty of the intervals, as 0.95. */
  readonly certainty: number;
}

/** One of the owner's other scenarios. */
export interface OtherScenario {
  readonly name: string;
  /** What it sets the inputs to that move, in the order of `inputsOf`. */
  readonly values: readonly number[];
  /** What may be off there; left out where odds are no goal. */
  readonly varied?: readonly Varied[];
}

export interface ProposalsAsk {
  readonly scenario: string | null;
  readonly freed: readonly Freed[];
  /** Where every input that moves stands now, in the order of `inputsOf`. */
  readonly present: readonly number[];
  readonly scenarios: readonly OtherScenario[];
  /** The input that counts the shims, and where it stands. */
  readonly shims: { readonly input: string; readonly present: number };
  /** Results that measure bolts. */
  readonly bolts: readonly string[];
  readonly loosened: readonly Loosened[];
  /** Left out where odds are no goal. */
  readonly readings?: Readings;
  readonly seed: number;
  /** Most mounts looked at in the search. */
  readonly evaluations: number;
}

/** A mount as it was looked at. */
export interface Mount {
  /** Values of the inputs that move, in the order of `inputsOf`. */
  readonly values: readonly number[];
  /** The least room over all limits, as a room ratio; negative where some limit fails. */
  readonly least: number;
  /** The limit that has it, and its room in its own unit; NaN where it has none. */
  readonly limit: string | undefined;
  readonly room: number;
  /** Limits that fail. */
  readonly failing: readonly string[];
  /** Shims, and the lengths of its bolts together, mm; NaN without an answer. */
  readonly shims: number;
  readonly bolts: number;
  /** First order: the sum of all limits' chances to fail there, with spreads of a mount nearby; when odds are a goal. */
  readonly fails?: number;
  /** Chance that every limit holds, sampled, for a mount that is shown. */
  readonly odds?: Estimate;
}

/** What a proposal is the best at. */
export type Best = 'room' | 'shims' | 'bolts' | 'odds';

export interface Proposal extends Mount {
  /**
   * What it comes first at, of all proposals, the present mount and the owner's scenarios that keep every limit; no
   * other proposal has the same place. Empty for one that stands between.
   */
  readonly best: readonly Best[];
}

/** A single change to a bound or a gear value that would let everything hold. */
export interface Loosening {
  readonly name: string;
  readonly from: number;
  readonly to: number;
  /** The mount at which everything then holds. */
  readonly mount: Mount;
}

/** Why nothing holds. */
export interface Conflict {
  /** Limits that no mount was found to keep all of; any fewer of them some mount keeps. */
  readonly limits: readonly string[];
  /** Whether no smaller set of limits conflicts, as far as mounts were looked at. */
  readonly isSmallest: boolean;
  /**
   * What the conflict rests on: every mount there is, a search that judged these limits alone, or nothing but the
   * mounts that happened to be looked at.
   */
  readonly shownBy: 'every mount' | 'a search' | 'chance';
  /** The mount at which the fewest limits fail, and fail by the least: never more than fail now. */
  readonly nearest: Mount;
  /** Single changes that would free it, the least first. */
  readonly loosenings: readonly Loosening[];
}

export interface Proposals {
  /** No proposal is worse than another at everything; the most room first. */
  readonly proposals: readonly Proposal[];
  readonly present: Mount;
  readonly scenarios: readonly { readonly name: string; readonly mount: Mount }[];
  /** Only when nothing holds. */
  readonly conflict?: Conflict;
  /** Mounts looked at. */
  readonly looked: number;
  readonly road: Road;
}

/** The inputs that move, each once. */
export const inputsOf = ({ freed }: Pick<ProposalsAsk, 'freed'>): readonly string[] => [
  ...new Set(freed.flatMap((it) => it.moves.map((move) => move.input))),
];
