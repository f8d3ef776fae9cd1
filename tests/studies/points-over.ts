import { STATES } from '../../src/calc/limits/states.ts';
import type { Evaluator } from '../../src/studies/evaluator.ts';
import type {
  Column,
  Evaluators,
  LimitColumns,
  PointEvaluator,
  Points,
  PointsAsk,
} from '../../src/studies/points.ts';
import { atOnce } from './at-once.ts';

const columnsFor = (count: number): LimitColumns => ({
  state: new Uint8Array(count),
  room: new Float64Array(count).fill(Number.NaN),
  ratio: new Float64Array(count).fill(Number.NaN),
});

/** Many points from an evaluator that answers one at a time. */
export function pointsOver(evaluator: Evaluator, { inputs, results, limits }: PointsAsk): PointEvaluator {
  const judged = limits ?? evaluator.evaluate(new Map()).limits.map((it) => it.name);
  return {
    inputs,
    results,
    limits: judged,
    evaluateMany(columns: readonly Column[], count: number): Points {
      const points: Points = {
        count,
        results: results.map(() => new Float64Array(count)),
        limits: judged.map(() => columnsFor(count)),
        refused: new Uint8Array(count),
      };
      for (let i = 0; i < count; i++) {
        const sample = evaluator.evaluate(
          new Map(inputs.map((name, n) => [name, columns[n]?.[i] as number | boolean | string])),
        );
        if (sample.refused !== undefined) points.refused[i] = 1;
        results.forEach((name, n) => {
          (points.results[n] as Float64Array)[i] = sample.value(name) ?? Number.NaN;
        });
        const byName = new Map(sample.limits.map((it) => [it.name, it]));
        judged.forEach((name, n) => {
          const limit = byName.get(name);
          const into = points.limits[n] as LimitColumns;
          into.state[i] = STATES.indexOf(limit?.state ?? 'no answer');
          into.room[i] = limit?.room ?? Number.NaN;
          into.ratio[i] = limit?.ratio ?? Number.NaN;
        });
      }
      return points;
    },
  };
}

/** Evaluators that answer one point at a time, as quick as a replay for small things. */
export const evaluatorsOver = (evaluatorOf: (scenario: string | null) => Evaluator): Evaluators => ({
  points: (scenario, ask) =>
    atOnce({ ...pointsOver(evaluatorOf(scenario), ask), road: { by: 'replay' as const } }),
});
