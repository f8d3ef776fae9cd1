import { afterAll, describe, expect, it } from 'vitest';
import { cannotBeBuilt, worstFirst } from '../../src/calc/limits/worst-first.ts';
import { newPlan } from '../../src/plan/new-plan.ts';
import type { Plan } from '../../src/plan/plan.ts';
import { Workbook } from '../../src/workbook/workbook.ts';

const plan = newPlan('Classes');
const workbook = new Workbook(plan);
afterAll(() => workbook.destroy());

const limitsWith = (overrides: Readonly<Record<string, number | boolean>>, of: Plan = plan) => {
  workbook.show(of, null, new Map(Object.entries(overrides)));
  return workbook.judgement().limits;
};

const unbuilt = (overrides: Readonly<Record<string, number | boolean>>): readonly string[] =>
  cannotBeBuilt(limitsWith(overrides)).map((it) => it.name);

describe('what cannot be built', () => {
  it('is nothing in the case to start from, nor where a gap alone is too small or a part too weak', () => {
    expect(unbuilt({})).toEqual([]);
    expect(unbuilt({ shim_count: 3 })).toEqual([]);
    expect(unbuilt({ boat_speed: 20 })).toEqual([]);
  });

  it.each([
    ['a foot over the edge', { port_foot_y: -560, transom_half_breadth: 570 }, 'port_foot_edge'],
    ['a drive unit that does not go on', { drive_overlap: 290 }, 'drive_headroom'],
    ['a lower clamp below the tube’s end', { lower_bracket_height: 130 }, 'bearing_gap'],
    ['brackets swapped', { lower_bracket_height: 810 }, 'bracket_spacing'],
    ['a shaft inside the transom', { transom_rake: 40 }, 'shaft_face_gap'],
    ['a strut longer than its tube', { strut_supply_length: 100 }, 'port_strut_cut'],
  ])('%s', (_, overrides, name) => {
    expect(unbuilt(overrides)).toContain(name);
  });

  it('is not yet so where the same limits are outside with the parts apart', () => {
    for (const overrides of [{ drive_gap_min: 500 }, { bearing_gap_min: 200 }, { spacing_min: 700 }]) {
      const limits = limitsWith(overrides);
      expect(limits.some((it) => it.verdict.state === 'outside' && it.class === 'too close')).toBe(true);
      expect(cannotBeBuilt(limits)).toEqual([]);
    }
  });
});

describe('an own limit', () => {
  const own = (result: string, unit: string): Plan => ({
    ...plan,
    ownCells: [{ name: 'mine', label: 'Mine', unit, value: 1 }],
    limits: [{ name: 'my_limit', result, low: 1e6, near: 0 }],
  });
  const classOf = (of: Plan) => limitsWith({}, of).find((it) => it.name === 'my_limit')?.class;

  it.each([
    ['mine', 'mm', 'too close'],
    ['mine', 'deg', 'too close'],
    ['mine', '–', 'too weak'],
    ['mine', 'N', 'too weak'],
    ['standoff', '–', 'too close'],
    ['stock_utilisation', 'mm', 'too weak'],
  ])('on %s, own cell in %s, is %s', (result, unit, kind) => {
    expect(classOf(own(result, unit))).toBe(kind);
  });

  it('comes after what cannot be built, in its class', () => {
    const limits = worstFirst(
      limitsWith({ port_foot_y: -560, transom_half_breadth: 570, shim_count: 3 }, own('mine', 'mm')),
    );
    expect(limits.slice(0, 2).map((it) => it.name)).toEqual(['port_foot_edge', 'my_limit']);
  });
});
