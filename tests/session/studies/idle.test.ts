import { describe, expect, it } from 'vitest';
import { oddsAsk } from '../../../src/session/studies/asks.ts';
import { ReplayEvaluators } from '../../../src/session/studies/evaluators.ts';
import { variedInputs } from '../../../src/session/studies/varied-inputs.ts';
import { slopes } from '../../../src/studies/drivers/slopes.ts';
import { Meter } from '../../../src/studies/meter.ts';
import { sampled } from '../../../src/studies/odds/sampled.ts';
import type { PointEvaluator } from '../../../src/studies/points.ts';
import { finish } from '../../../src/studies/study.ts';
import { errorModel } from '../../../src/studies/uncertain/error-model.ts';
import { reaches } from '../../../src/studies/uncertain/reaches.ts';
import { Workbook } from '../../../src/workbook/workbook.ts';
import { demoPlan } from '../../studies/plan-points.ts';

const plan = demoPlan();
const inputs = variedInputs(plan, null).filter((it) => it.offBy > 0 && !it.whole);
const evaluator = finish(
  new ReplayEvaluators(new Workbook(plan)).of(plan).points(
    null,
    { inputs: inputs.map((it) => it.name), results: [] },
    inputs.map(({ name, value, offBy }) => ({ name, low: value - offBy, high: value + offBy })),
  ),
);
/** The same without word of which inputs are idle. */
const unaware: PointEvaluator = { ...evaluator, idle: new Set() };
const idle = inputs.filter((it) => evaluator.idle?.has(it.name));

describe('inputs on which no limit can depend', () => {
  it('are told, and the others are not all of them', () => {
    expect(idle.map((it) => it.name)).toContain('single_strut_od');
    expect(idle.map((it) => it.name)).not.toContain('strut_od');
    expect(idle.length).toBeLessThan(inputs.length / 2);
  });

  it('leave every limit as it is, wherever they stand', () => {
    const count = 9;
    const columns = (of: ReadonlySet<string>) =>
      inputs.map(({ name, value, offBy }) =>
        Float64Array.from({ length: count }, (_, n) => value + (of.has(name) ? offBy * (n / 4 - 1) : 0)),
      );
    const kept = ({ limits }: ReturnType<PointEvaluator['evaluateMany']>) =>
      limits.map(({ state, room }) => [[...state], [...room]]);
    const still = kept(unaware.evaluateMany(columns(new Set()), count));
    expect(kept(unaware.evaluateMany(columns(new Set(idle.map((it) => it.name))), count))).toEqual(still);
  });

  it('have the slopes and the reach that they are found to have when they are moved', () => {
    expect(finish(slopes(evaluator, inputs, new Meter()))).toEqual(
      finish(slopes(unaware, inputs, new Meter())),
    );
    const model = errorModel(oddsAsk(plan, null, { fine: false }).errors, 0.5);
    const reached = (of: PointEvaluator) => finish(reaches(of, model, 1, new Meter()));
    expect(reached(evaluator)).toEqual(reached(unaware));
  });

  it('take no part in a sample', () => {
    const ask = { repeats: 4, points: 256, seed: 3, certainty: 0.99 };
    const model = errorModel(oddsAsk(plan, null, { fine: false }).errors, 0);
    const order = model.factors.map((_, i) => i);
    const varied: number[] = [];
    const watching: PointEvaluator = {
      ...evaluator,
      evaluateMany(columns, count) {
        varied.push(columns.filter((it) => it[0] !== it[1]).length);
        return evaluator.evaluateMany(columns, count);
      },
    };
    finish(sampled(watching, model, order, ask, new Meter()));
    expect(new Set(varied)).toEqual(new Set([inputs.length - idle.length]));
  });
});
