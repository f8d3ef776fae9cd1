import { expect, it } from 'vitest';
import { limitCells } from '../../src/plan/book.ts';
import { newPlan } from '../../src/plan/new-plan.ts';
import { beforeDrilling } from '../../src/workbook/before-drilling.ts';
import { Workbook } from '../../src/workbook/workbook.ts';
import { caseInputs, type Inputs } from './model-case.ts';

const plan = newPlan('Before drilling');

const given = (changes: Inputs) => {
  const book = new Workbook(plan, null);
  book.show(plan, null, new Map(Object.entries({ ...caseInputs, ...changes })));
  const it = beforeDrilling(book.judgement(), plan, null, 'mm', ['bolt_diameter', 'transom_rake']);
  book.destroy();
  return it;
};

it('every limit that can make a plan unbuildable says why, as it stands behind a colon', () => {
  const its = limitCells.filter((it) => it.class === 'cannot be built' || it.unbuildable_below !== undefined);
  expect(its.length).toBeGreaterThan(20);
  for (const { name, unbuildable } of its)
    expect([name, unbuildable]).toEqual([name, expect.stringMatching(/^[a-z].*[^.]$/)]);
});

it.each([
  [{ foot_bolt_spacing: 140 }, 'the foot’s bolts lie outside its flange, or too near its edge'],
  // Feet 120 wide whose middles are 60 apart.
  [{ port_foot_y: -30, starboard_foot_y: 30 }, /^two flanges on the transom overlap by 60 mm$/],
  // Half of a foot 60 high above 885 is 15 over an edge at 900.
  [{ port_foot_height: 885 }, 'the port foot hangs 15 mm over the transom’s edge'],
] as readonly (readonly [Inputs, string | RegExp])[])('%o cannot be built', (changes, why) => {
  const { unbuildable } = given(changes);
  expect(unbuildable.some((it) => (typeof why === 'string' ? it === why : why.test(it)))).toBe(true);
});

it('the case to start from can be built; what is outside all the same is told, and what is a stand-in under a hole', () => {
  expect(given({})).toEqual({
    unbuildable: [],
    outside: [],
    standIns: expect.arrayContaining([expect.any(String)]),
  });
  const close = given({ shim_count: 3 });
  expect(close.unbuildable).toEqual([]);
  expect(close.outside.join()).toMatch(/^rudder gap, 5\.3 mm short/);
});
