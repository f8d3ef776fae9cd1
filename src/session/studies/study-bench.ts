import type { Evaluator } from '../../studies/evaluator.ts';
import type { Evaluators, PointRange, PointsAsk } from '../../studies/points.ts';
import type { Study } from '../../studies/study.ts';

/** What a study is worked out with: one point at a time, or many at once. */
export interface StudyBench {
  /** Any input may be varied and any result looked at: the engine answers. */
  readonly evaluatorOf: (scenario: string | null) => Evaluator;
  /** Only what is asked for: a replay answers, where it is proved equal to the engine. */
  readonly oneAtATime: (
    scenario: string | null,
    ask: PointsAsk,
    ranges: readonly PointRange[],
  ) => Study<Evaluator>;
  readonly points: Evaluators;
  /** All names that decide each limit, through every formula. */
  readonly decides: (scenario: string | null) => ReadonlyMap<string, ReadonlySet<string>>;
  /** Whether `oneAtATime` would answer at once, its replay having been proved before. */
  readonly isProved: (scenario: string | null, ask: PointsAsk, ranges: readonly PointRange[]) => boolean;
}
