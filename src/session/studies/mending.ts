import type { PointRange } from '../../studies/points.ts';
import { type Remedies, type RemedyAsk, remedies } from '../../studies/remedies.ts';
import type { Study } from '../../studies/study.ts';
import type { StudyBench } from './study-bench.ts';

export interface RemediesCall extends RemedyAsk {
  readonly scenario: string | null;
  /** Every choice that a remedy of any limit may move, and over which range: one proof is enough for all of them. */
  readonly over: readonly PointRange[];
}

/**
 * Remedies by the replay once it has been proved; the first ones by the engine, which has them sooner than a proof
 * would be done, and the proof after them.
 */
export function* mending(bench: StudyBench, { scenario, over, ...ask }: RemediesCall): Study<Remedies> {
  const points = { inputs: over.map((it) => it.name), results: [] };
  if (bench.isProved(scenario, points, over)) {
    return yield* remedies(yield* bench.oneAtATime(scenario, points, over), ask);
  }
  const found = yield* remedies(bench.evaluatorOf(scenario), ask);
  yield { done: 1, of: 1, soFar: found };
  yield* bench.oneAtATime(scenario, points, over);
  return found;
}
