import type { Plan } from '../../src/plan/plan.ts';
import { oddsAsk } from '../../src/session/studies/asks.ts';
import { ReplayEvaluators } from '../../src/session/studies/evaluators.ts';
import { variedInputs } from '../../src/session/studies/varied-inputs.ts';
import { slopes } from '../../src/studies/drivers/slopes.ts';
import type { Varied } from '../../src/studies/drivers/varied.ts';
import { Meter } from '../../src/studies/meter.ts';
import { sampled } from '../../src/studies/odds/sampled.ts';
import { odds } from '../../src/studies/odds.ts';
import type { PointRange } from '../../src/studies/points.ts';
import { finish } from '../../src/studies/study.ts';
import { errorModel } from '../../src/studies/uncertain/error-model.ts';
import { Workbook } from '../../src/workbook/workbook.ts';

const ROUNDS = 3;

const round = (ms: number): number => Number(ms.toFixed(1));

const median = (times: readonly number[]): number => {
  const sorted = [...times].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
};

function timed(run: () => unknown): number {
  const start = performance.now();
  run();
  return performance.now() - start;
}

/**
 * Slopes of all limits by all inputs of a plan, 102,400 draws of every reading with all limits judged, and the
 * whole study of odds round them; medians of interleaved rounds, ms, on a replay that is proved already.
 */
export function sureness(plan: Plan): Record<string, number> {
  const evaluators = new ReplayEvaluators(new Workbook(plan)).of(plan);
  const inputs = variedInputs(plan, null);
  const ask = oddsAsk(plan, null, { fine: true });
  const model = errorModel(ask.errors, 0);
  const order = model.factors.map((_, i) => i);
  const around = (of: readonly Varied[]): PointRange[] =>
    of.map(({ name, value, offBy, whole }) => {
      const far = whole ? 1 : Math.max(offBy, Math.abs(value) / 100);
      return { name, low: value - far, high: value + far, whole };
    });
  const ready = (of: readonly Varied[]) => {
    const found = finish(
      evaluators.points(null, { inputs: of.map((it) => it.name), results: [] }, around(of)),
    );
    if (found.road.by === 'engine') throw new Error(found.road.why);
    return found;
  };
  const forSlopes = ready(inputs);
  const forOdds = ready(inputs.filter((it) => it.offBy > 0 && !it.whole));
  const tasks = {
    slopes_ms: () => finish(slopes(forSlopes, inputs, new Meter())),
    odds_100k_ms: () => finish(sampled(forOdds, model, order, ask, new Meter())),
    odds_study_ms: () => finish(odds(evaluators, ask)),
  };
  const times: Record<string, number[]> = { slopes_ms: [], odds_100k_ms: [], odds_study_ms: [] };
  for (const run of Object.values(tasks)) run();
  for (let n = 0; n < ROUNDS; n++) {
    for (const [name, run] of Object.entries(tasks)) times[name]?.push(timed(run));
  }
  return Object.fromEntries(Object.entries(times).map(([name, all]) => [name, round(median(all))]));
}
