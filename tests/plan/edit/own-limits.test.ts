import { expect, it } from 'vitest';
import { deleteOwnLimit, setOwnCell, setOwnLimit } from '../../../src/plan/edit.ts';
import { newPlan } from '../../../src/plan/new-plan.ts';
import type { OwnLimit } from '../../../src/plan/plan.ts';
import { planFrom, whyFrom } from './edits.ts';

const base = newPlan('Boat');
const limit = (more: Partial<OwnLimit> = {}): OwnLimit => ({
  name: 'mine',
  result: 'standoff',
  low: 1,
  near: 0,
  ...more,
});

it('adds an own limit, puts it in place of the one with its name, and takes it away', () => {
  const one = planFrom(setOwnLimit(base, limit()));
  const two = planFrom(setOwnLimit(one, limit({ name: 'other', result: 'shaft_x' })));
  const three = planFrom(setOwnLimit(two, limit({ low: 2 })));
  expect(three.limits.map((it) => [it.name, it.low])).toEqual([
    ['mine', 2],
    ['other', 1],
  ]);
  expect(planFrom(deleteOwnLimit(three, 'mine')).limits.map((it) => it.name)).toEqual(['other']);
  expect(whyFrom(deleteOwnLimit(three, 'six'))).toBe('There is no limit of your own named six.');
});

it('judges a result or an own cell', () => {
  const plan = planFrom(setOwnCell(base, { name: 'gap', label: '', unit: 'mm', value: 1 }));
  expect(planFrom(setOwnLimit(plan, limit({ result: 'gap' }))).limits).toHaveLength(1);
  expect(whyFrom(setOwnLimit(base, limit({ result: 'gap' })))).toContain('no result or own cell');
  expect(whyFrom(setOwnLimit(base, limit({ result: 'tube_od' })))).toContain('no result or own cell');
});

it.each<[string, OwnLimit, string]>([
  [
    'a name that is a limit already',
    limit({ name: 'rudder_gap' }),
    'There is a limit named rudder_gap already.',
  ],
  ['a name that is none', limit({ name: 'My limit' }), 'small letters'],
  ['no bound', { name: 'mine', result: 'standoff', near: 0 }, 'a low bound, a high bound or both'],
  ['bounds upside down', limit({ low: 2, high: 1 }), 'above its high bound'],
  ['a bound without end', limit({ low: Number.NEGATIVE_INFINITY }), 'must be a number'],
  ['a near band below 0', limit({ near: -1 }), 'at least 0'],
  ['a note too long', limit({ note: 'x'.repeat(5000) }), '5000 characters'],
])('refuses %s', (_what, given, why) => {
  expect(whyFrom(setOwnLimit(base, given))).toContain(why);
});
