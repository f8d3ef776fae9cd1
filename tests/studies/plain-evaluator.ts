import { judge } from '../../src/calc/limits/judge.ts';
import type { Evaluator, Overrides } from '../../src/studies/evaluator.ts';

/** A limit on a plain function of the inputs; null where it has no answer. */
export interface PlainLimit {
  readonly name: string;
  readonly of: (input: (name: string) => number) => number | null;
  readonly low?: number;
  readonly high?: number;
  readonly near?: number;
  readonly graded?: boolean;
  readonly applies?: (input: (name: string) => number) => boolean;
}

/** An evaluator of limits on plain functions, which counts how often it is asked. */
export function plainEvaluator(
  inputs: Readonly<Record<string, number>>,
  limits: readonly PlainLimit[],
): Evaluator & { readonly count: () => number } {
  let count = 0;
  return {
    count: () => count,
    evaluate(overrides: Overrides) {
      count++;
      const input = (name: string): number => Number(overrides.get(name) ?? inputs[name]);
      return {
        value: (name) => limits.find((it) => it.name === name)?.of(input) ?? null,
        limits: limits.map(({ name, of, low, high, near = 0, graded = true, applies }) => {
          const value = of(input);
          const { state, room, ratio } = judge({
            value: value ?? undefined,
            low,
            high,
            near,
            graded,
            applies: applies?.(input) ?? true,
          });
          return {
            name,
            state,
            value,
            low: low ?? null,
            high: high ?? null,
            room: room ?? null,
            ratio: ratio ?? null,
          };
        }),
      };
    },
  };
}
