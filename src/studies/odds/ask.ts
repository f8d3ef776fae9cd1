import type { Estimate } from '../../calc/uncertainty/interval.ts';
import type { Road } from '../points.ts';
import type { ReadingError } from '../uncertain/reading-error.ts';
import type { FirstOrder } from './first-order.ts';
import type { Rare } from './rare.ts';
import type { Worst } from './worst-case.ts';

/** How sure may the owner be: over which errors, from which draws. */
export interface OddsAsk {
  readonly scenario: string | null;
  readonly errors: readonly ReadingError[];
  /** Inputs that follow others, of which it is asked how far that makes them off. */
  readonly follow?: readonly string[];
  /** How far readings with one instrument share their error, 0 to 1. */
  readonly share: number;
  readonly seed: number;
  /** Independent repeats and points in each, a power of two. */
  readonly repeats: number;
  readonly points: number;
  /** Certainty of every interval, as 0.95. */
  readonly certainty: number;
}

/** What sampling found for one limit. */
export interface Sampled {
  /** Chance that it does not hold. */
  readonly fails: Estimate;
  readonly hits: number;
  readonly count: number;
  /** Of the hits, those for want of an answer. */
  readonly lacking: number;
  /** Mean and standard deviation of the room where it has one; null where it has none. */
  readonly mean: number | null;
  readonly deviation: number | null;
}

export interface LimitOdds {
  readonly limit: string;
  /** Room at the readings as they are. */
  readonly room: number | null;
  readonly holds: boolean;
  /** Null where the room has no slopes at the readings. */
  readonly firstOrder: FirstOrder | null;
  readonly worst: Worst;
  readonly sampled: Sampled;
  /** A chance too small for sampling alone, found about its design points. */
  readonly rare?: Rare;
}

/** An input that follows others: its value now, and where it lies in so many of all draws as the intervals are sure. */
export interface Followed {
  readonly name: string;
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

export interface Odds {
  readonly road: Road;
  /** A first estimate, from few draws and the first corners alone; the answer itself has no such mark. */
  readonly first?: true;
  readonly limits: readonly LimitOdds[];
  readonly followed: readonly Followed[];
  readonly together: {
    readonly sampled: Sampled;
    readonly rare?: Rare;
    /** First order: the sum of all limits' chances of failing, which theirs together cannot pass; at most 1. */
    readonly firstOrder: number | null;
    /** Whether every limit holds in its own worst case. */
    readonly worstHolds: boolean;
  };
}
