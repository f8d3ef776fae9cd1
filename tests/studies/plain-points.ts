import { judge } from '../../src/calc/limits/judge.ts';
import { STATES } from '../../src/calc/limits/states.ts';
import type { Evaluators, Points, PointsAsk, RoadEvaluator } from '../../src/studies/points.ts';
import { atOnce } from './at-once.ts';

/** A limit on a plain function of the inputs, named; it holds while its value is not below `low` nor above `high`. */
export interface PlainPointLimit {
  readonly name: string;
  readonly of: (input: Readonly<Record<string, number>>) => number | null;
  readonly low?: number;
  readonly high?: number;
  readonly graded?: boolean;
  readonly applies?: (input: Readonly<Record<string, number>>) => boolean;
}

/** Evaluators of limits on plain functions; inputs not asked for stand at the values given. */
export function plainPoints(
  limits: readonly PlainPointLimit[],
  present: Readonly<Record<string, number>> = {},
): Evaluators & { readonly count: () => number; readonly at: (ask: PointsAsk) => RoadEvaluator } {
  let evaluations = 0;
  return {
    count: () => evaluations,
    points(_scenario, ask) {
      return atOnce(this.at(ask));
    },
    at(ask) {
      const asked = (ask.limits ?? limits.map((it) => it.name)).map((name) => {
        const found = limits.find((it) => it.name === name);
        if (found === undefined) throw new Error(`There is no limit named ${name}.`);
        return found;
      });
      return {
        inputs: ask.inputs,
        results: ask.results,
        limits: asked.map((it) => it.name),
        road: { by: 'replay' },
        evaluateMany(columns, count): Points {
          evaluations += count;
          const judged = asked.map(() => ({
            state: new Uint8Array(count),
            room: new Float64Array(count),
            ratio: new Float64Array(count),
          }));
          for (let n = 0; n < count; n++) {
            const at: Record<string, number> = { ...present };
            for (const [i, name] of ask.inputs.entries()) at[name] = Number(columns[i]?.[n]);
            for (const [i, { of, low, high, graded = true, applies }] of asked.entries()) {
              const verdict = judge({
                value: of(at) ?? undefined,
                low,
                high,
                near: 0,
                graded,
                applies: applies?.(at) ?? true,
              });
              const into = judged[i];
              if (into === undefined) continue;
              into.state[n] = STATES.indexOf(verdict.state);
              into.room[n] = verdict.room ?? Number.NaN;
              into.ratio[n] = verdict.ratio ?? Number.NaN;
            }
          }
          return {
            count,
            results: ask.results.map(() => new Float64Array(count).fill(Number.NaN)),
            limits: judged,
            refused: new Uint8Array(count),
          };
        },
      };
    },
  };
}
