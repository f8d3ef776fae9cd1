import { limitCells } from '../../plan/book.ts';
import { type FirstMount, PLACED_BY, type Readings, type Stock } from '../../studies/first-mount/ask.ts';
import { firstMount } from '../../studies/first-mount/first-mount.ts';
import type { Loosened } from '../../studies/proposals/ask.ts';
import type { Study } from '../../studies/study.ts';
import type { StudyBench } from './study-bench.ts';

export interface MountCall extends Stock {
  readonly scenario: string | null;
  readonly loosened: readonly Loosened[];
}

/** Limits that say whether a mount can be built at all. */
const BUILT: ReadonlySet<string> = new Set(
  limitCells.filter((it) => it.class === 'cannot be built').map((it) => it.name),
);

/** A first mount by the readings as they are worked out in a scenario. */
export function* mounting(bench: StudyBench, call: MountCall): Study<FirstMount> {
  const sample = bench.evaluatorOf(call.scenario).evaluate(new Map());
  const readings = Object.fromEntries(
    PLACED_BY.map((name) => [name, sample.value(name) ?? Number.NaN]),
  ) as Record<keyof Readings, number>;
  return yield* firstMount(bench.points, {
    ...call,
    readings,
    decides: bench.decides(call.scenario),
    built: BUILT,
  });
}
