import type { Evaluator } from './evaluator.ts';
import type { Study } from './study.ts';

/** The values of these names as they stand, numbers in base units, yes as 1 and no as 0; null where there is none. */
export function* values(
  evaluator: Evaluator,
  names: readonly string[],
): Study<ReadonlyMap<string, number | null>> {
  const sample = evaluator.evaluate(new Map());
  const found = new Map(names.map((name) => [name, sample.value(name)]));
  yield { done: 1, of: 1 };
  return found;
}
