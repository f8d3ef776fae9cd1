import { describe, expect, it } from 'vitest';
import { newPlan } from '../../../src/plan/new-plan.ts';
import type { Plan } from '../../../src/plan/plan.ts';
import { turningAsk } from '../../../src/session/studies/asks.ts';
import { benchOf } from '../../../src/session/studies/bench-of.ts';
import { ReplayEvaluators } from '../../../src/session/studies/evaluators.ts';
import { axisOf } from '../../../src/session/studies/map-axis.ts';
import { start } from '../../../src/session/studies/registry.ts';
import { sweepAsk } from '../../../src/session/studies/sweep-ask.ts';
import { variedCell } from '../../../src/session/studies/varied-cell.ts';
import { finish } from '../../../src/studies/study.ts';
import { readOverrides } from '../../../src/workbook/overrides.ts';
import { Workbook } from '../../../src/workbook/workbook.ts';

const plan: Plan = {
  ...newPlan('Own cells varied'),
  ownCells: [
    { name: 'my_play', label: 'Play', unit: 'mm', value: -4 },
    { name: 'my_none', label: 'None', unit: 'mm', value: null },
    { name: 'my_nought', label: 'Nought', unit: '–', value: 0 },
    { name: 'my_gap', label: 'Gap kept', unit: 'mm', value: null, formula: '=40 + 2*my_play + 0*shim_count' },
  ],
  limits: [{ name: 'my_limit', result: 'my_gap', low: 35, near: 1 }],
};

const cell = (name: string) => {
  const found = variedCell(name, plan);
  if (found === undefined) throw new Error(`${name} cannot be varied`);
  return found;
};

describe('a cell of one’s own that is varied', () => {
  it('holds a plain number, and runs from 0 to twice where it stands', () => {
    expect(cell('my_play')).toMatchObject({ usual: [-8, 0], step: 0.05, unit: 'mm', label: 'Play' });
    expect(cell('my_nought')).toMatchObject({ usual: [-1, 1], step: 0.02 });
    for (const name of ['my_none', 'my_gap', 'rudder_gap', 'stop_collar', 'gone']) {
      expect(variedCell(name, plan), name).toBeUndefined();
    }
  });

  const workbook = new Workbook(plan);
  const bench = benchOf(workbook, new ReplayEvaluators(workbook), plan);

  it('is swept: a limit on what follows it turns where its formula says', () => {
    const swept = finish(start(bench, { study: 'sweep', ask: sweepAsk(cell('my_play'), ['my_gap'], null) }));
    expect(swept.ask.present).toBe(-4);
    for (const { x, values } of swept.points) expect(values[0]).toBeCloseTo(40 + 2 * x, 12);
    const turned = swept.turnings.filter((it) => it.limit === 'my_limit');
    expect(turned[0]?.at).toBeCloseTo(-2.5, 4);
  });

  it('is a side of a map, by the replay', () => {
    const ask = {
      scenario: null,
      x: axisOf(cell('my_play'), -4),
      y: axisOf(cell('shim_count'), 3),
      results: ['my_gap'],
      fineness: 5,
    };
    const mapped = finish(start(bench, { study: 'map', ask }));
    expect(mapped.road).toEqual({ by: 'replay' });
    const wide = mapped.xs.length;
    for (const [i, x] of mapped.xs.entries()) {
      expect(mapped.results[0]?.[i]).toBeCloseTo(40 + 2 * x, 12);
      expect(mapped.results[0]?.[i + wide]).toBeCloseTo(40 + 2 * x, 12);
    }
  });

  it('has turning values', () => {
    const { limits } = finish(start(bench, { study: 'turning', ask: turningAsk(plan, null, 'my_play') }));
    const [turn] = limits.find((it) => it.limit === 'my_limit')?.turns ?? [];
    expect(turn?.above).toBeCloseTo(-2.5, 5);
  });

  it('is set for one evaluation, with a number alone', () => {
    const set = (value: unknown, name = 'my_play') => readOverrides([[name, value]], plan, null);
    expect(set('-2.5')).toEqual({ ok: true, contents: new Map([['my_play', -2.5]]) });
    expect(set('2 in')).toEqual({
      ok: false,
      why: 'my_play is a cell of your own; it takes a plain number, not “2 in”.',
    });
    expect(set(1, 'my_gap')).toEqual({
      ok: false,
      why: 'my_gap follows its own formula and cannot be set.',
    });
  });
});
