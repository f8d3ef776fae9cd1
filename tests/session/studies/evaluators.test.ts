import { describe, expect, it } from 'vitest';
import { STATES } from '../../../src/calc/limits/states.ts';
import { seeded } from '../../../src/calc/uncertainty/seeded.ts';
import { newPlan } from '../../../src/plan/new-plan.ts';
import type { Plan } from '../../../src/plan/plan.ts';
import { ReplayEvaluators } from '../../../src/session/studies/evaluators.ts';
import { evaluatorOver } from '../../../src/session/study-evaluator.ts';
import type { PointRange } from '../../../src/studies/points.ts';
import { finish } from '../../../src/studies/study.ts';
import { Workbook } from '../../../src/workbook/workbook.ts';

const plan: Plan = {
  ...newPlan('Points'),
  ownCells: [
    { name: 'my_margin', label: 'Margin', unit: 'mm', value: 5 },
    { name: 'my_gap', label: 'Gap kept', unit: 'mm', value: null, formula: '=rudder_gap - my_margin' },
  ],
  limits: [{ name: 'my_limit', result: 'my_gap', low: 40, near: 5 }],
};

const ranges: readonly PointRange[] = [
  { name: 'shim_count', low: 0, high: 8, whole: true },
  { name: 'upper_bracket_height', low: 200, high: 1300 },
  { name: 'tube_wall', low: 1, high: 40 },
  { name: 'transom_build', values: ['solid', 'cored'] },
  { name: 'lower_flange_hinged', values: [true, false] },
];
const inputs = ranges.map((it) => it.name);
const results = ['rudder_gap', 'bolt_utilisation', 'drive_headroom', 'two_struts'];

function drawn(count: number): (readonly (number | boolean | string)[])[] {
  const random = seeded(7);
  return ranges.map((range) =>
    Array.from({ length: count }, () => {
      const share = random();
      if ('values' in range)
        return range.values[Math.floor(share * range.values.length)] as number | boolean | string;
      const value = range.low + share * (range.high - range.low);
      return range.whole === true ? Math.round(value) : value;
    }),
  );
}

describe('points by replay', () => {
  const evaluators = new ReplayEvaluators(new Workbook(plan)).of(plan);
  const points = (...given: Parameters<typeof evaluators.points>) => finish(evaluators.points(...given));

  it('are what the engine answers one by one, refused points and all', () => {
    const evaluator = points(null, { inputs, results }, ranges);
    expect(evaluator.road).toEqual({ by: 'replay' });
    const count = 60;
    const columns = drawn(count);
    const found = evaluator.evaluateMany(columns as never, count);
    const single = evaluatorOver(new Workbook(plan), plan, null);
    let refused = 0;
    for (let i = 0; i < count; i++) {
      const sample = single.evaluate(new Map(inputs.map((name, n) => [name, columns[n]?.[i] as number])));
      expect(found.refused[i]).toBe(sample.refused === undefined ? 0 : 1);
      if (sample.refused !== undefined) refused++;
      const theirs = [
        results.map((name) => sample.value(name) ?? Number.NaN),
        sample.limits.map((it) => [it.name, it.state, it.room ?? Number.NaN]),
      ];
      const ours = [
        found.results.map((it) => it[i]),
        evaluator.limits.map((name, n) => {
          const limit = found.limits[n];
          return [name, STATES[limit?.state[i] ?? 9], limit?.room[i]];
        }),
      ];
      expect(ours).toEqual(theirs);
    }
    expect(refused).toBeGreaterThan(5);
    expect(refused).toBeLessThan(count - 5);
    expect(evaluator.limits.at(-1)).toBe('my_limit');
  });

  it('vary a number of the owner’s own', () => {
    const evaluator = points(null, { inputs: ['my_margin'], results: ['my_gap'], limits: ['my_limit'] }, [
      { name: 'my_margin', low: 0, high: 20 },
    ]);
    const {
      results: [gap = []],
      limits: [limit],
    } = evaluator.evaluateMany([[0, 10, 20]], 3);
    expect(gap[0] as number).toBeCloseTo((gap[1] as number) + 10, 9);
    expect([...(limit?.state ?? [])].map((it) => STATES[it])).toEqual(['inside', 'inside', 'outside']);
  });

  it('name what is not known', () => {
    expect(() => points(null, { inputs: ['nothing'], results: [] }, [])).toThrow(
      'There is no cell named nothing.',
    );
    expect(() => points(null, { inputs: [], results: [], limits: ['none'] }, [])).toThrow(
      'There is no limit named none.',
    );
  });

  it('go by the engine where a replay cannot be had, and say why', () => {
    class Unreplayed extends Workbook {
      override replay = (): { ok: false; why: string } => ({ ok: false, why: 'my_gap cannot be replayed.' });
    }
    const ask = { inputs: ['shim_count'], results: ['rudder_gap'] };
    const range = { name: 'shim_count', low: 0, high: 8, whole: true };
    const unreplayed = new ReplayEvaluators(new Unreplayed(plan)).of(plan);
    const evaluator = finish(unreplayed.points(null, ask, [range]));
    expect(evaluator.road).toEqual({ by: 'engine', why: 'my_gap cannot be replayed.' });
    const byReplay = points(null, ask, [range]);
    const [a, b] = [evaluator, byReplay].map((it) => it.evaluateMany([[2, 3, 99]], 3));
    expect([...(a?.results[0] ?? [])]).toEqual([...(b?.results[0] ?? [])]);
    expect([...(a?.refused ?? [])]).toEqual([0, 0, 1]);
  });

  it('are proved a point at a time, whatever is asked meanwhile', () => {
    const own = new ReplayEvaluators(new Workbook(plan)).of(plan);
    const ask = { inputs: ['shim_count'], results: ['rudder_gap'] };
    const range = { name: 'shim_count', low: 0, high: 8, whole: true };
    const proof = own.points(null, ask, [range]);
    let yields = 0;
    const gaps: number[] = [];
    for (let step = proof.next(); step.done !== true; step = proof.next()) {
      yields++;
      if (yields % 20 !== 0) continue;
      const other = { inputs: ['lower_bracket_height'], results: ['bearing_gap'] };
      const height = { name: 'lower_bracket_height', low: yields, high: 500 };
      const found = finish(own.points(null, other, [height]));
      gaps.push(found.evaluateMany([[400]], 1).results[0]?.[0] as number);
    }
    expect(yields).toBeGreaterThan(60);
    const alone = points(null, { inputs: ['lower_bracket_height'], results: ['bearing_gap'] }, [
      { name: 'lower_bracket_height', low: 0, high: 500 },
    ]).evaluateMany([[400]], 1).results[0]?.[0] as number;
    expect(gaps).toEqual([alone, alone, alone]);
    expect(finish(own.points(null, ask, [range])).road).toEqual({ by: 'replay' });
  });
});
