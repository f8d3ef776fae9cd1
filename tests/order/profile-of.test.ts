import { describe, expect, it } from 'vitest';
import { holesOf } from '../../src/order/holes.ts';
import { profileOf } from '../../src/order/profile-of.ts';
import { newPlan } from '../../src/plan/new-plan.ts';
import type { Plan } from '../../src/plan/plan.ts';
import { Workbook } from '../../src/workbook/workbook.ts';

/** A face that bends: upright to 400 mm, then 3 aft for each 4 up. A line 1000 aft, on a boat that lies level. */
const rows = [
  [0, 1000],
  [400, 1000],
  [800, 700],
];

function given(follow: boolean) {
  const made = newPlan('Bent face');
  const flag = made.inputs.get('follow_profile');
  if (flag === undefined) throw new Error('There is no switch.');
  const plan: Plan = {
    ...made,
    inputs: new Map(made.inputs).set('follow_profile', { ...flag, value: follow }),
    tables: [{ name: 'transom_readings', columns: ['height', 'distance'], rows }],
  };
  const book = new Workbook(plan, null);
  return { plan, ask: (name: string) => book.answer(name).value };
}

describe('the face that holes are marked on', () => {
  it('is the measured one when the plan follows it: 400 up and a 3-4-5 slope to 800', () => {
    const { plan, ask } = given(true);
    const profile = profileOf(ask, plan);
    expect(profile.map(([z]) => z)).toEqual([0, 400, 800]);
    // Feet at 790 up: 400, and 390 × 5/4 along the slope.
    const foot = holesOf(ask, 'mm', profile).holes.find((it) => it.place === 'port');
    expect(foot?.upFace.exact).toBeCloseTo(400 + 390 * 1.25, 6);
    expect(holesOf(ask, 'mm', profile).holes[0]?.upFace.exact).toBeCloseTo(250, 6);
  });

  it('is the straight one otherwise', () => {
    const { plan, ask } = given(false);
    expect(profileOf(ask, plan)).toEqual([]);
  });
});
