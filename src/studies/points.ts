import type { Study } from './study.ts';

/** An input's value at every point: numbers in base units, yes/no as 1 and 0 or as such, words. */
export type Column = ArrayLike<number> | ArrayLike<boolean> | ArrayLike<string>;

/** What a study looks at, at many points. */
export interface PointsAsk {
  /** Inputs that change from point to point; columns are given in this order. */
  readonly inputs: readonly string[];
  readonly results: readonly string[];
  /** Limits to be judged, in this order; every one, in the workbook's order, when left out. */
  readonly limits?: readonly string[];
}

/** One limit over many points: its state as a number (`calc/limits/states.ts`), its room and room ratio, NaN where it has none. */
export interface LimitColumns {
  readonly state: Uint8Array;
  readonly room: Float64Array;
  readonly ratio: Float64Array;
}

/** What many points give; NaN where there is no answer, yes/no as 1 and 0. Read it before the next evaluation. */
export interface Points {
  readonly count: number;
  /** One column for each result asked for. */
  readonly results: readonly Float64Array[];
  /** One for each name in `limits` of the evaluator. */
  readonly limits: readonly LimitColumns[];
  /** 1 where the inputs cannot be so together at all; nothing has an answer there. */
  readonly refused: Uint8Array;
}

/** Answers many points at once, for one plan in one scenario. */
export interface PointEvaluator {
  readonly inputs: readonly string[];
  readonly results: readonly string[];
  readonly limits: readonly string[];
  /** Inputs on which nothing looked at can depend, where that is known. */
  readonly idle?: ReadonlySet<string>;
  evaluateMany(columns: readonly Column[], count: number): Points;
}

/** How a study's points were worked out, and why not by replay where they were not. */
export type Road = { readonly by: 'replay' } | { readonly by: 'engine'; readonly why: string };

/** An evaluator, and how it works. */
export interface RoadEvaluator extends PointEvaluator {
  readonly road: Road;
}

/** What a study receives: evaluators made ready for what it asks. */
export interface Evaluators {
  /**
   * `ranges` are the ranges over which the inputs will vary: the replay is proved equal to the engine there before its
   * first use, a point at a time. Throws a sentence when a name is not known.
   */
  points(scenario: string | null, ask: PointsAsk, ranges: readonly PointRange[]): Study<RoadEvaluator>;
}

/** What an input is varied over. */
export type PointRange = { readonly name: string } & (
  | { readonly low: number; readonly high: number; readonly whole?: boolean }
  | { readonly values: readonly (number | boolean | string)[] }
);
