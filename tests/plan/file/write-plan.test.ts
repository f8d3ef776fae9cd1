import { expect, it } from 'vitest';
import { writePlan } from '../../../src/plan/file/write-plan.ts';
import { newPlan } from '../../../src/plan/new-plan.ts';
import type { Plan, Reading } from '../../../src/plan/plan.ts';

const choice = (value: number): Reading => ({ value, origin: 'choice' });

it('gives the same text whatever order things were put in', () => {
  const base = newPlan('Boat');
  const inOrder: Plan = {
    ...base,
    scenarios: [
      {
        name: 'A',
        overrides: new Map([
          ['strut_count', choice(1)],
          ['shim_count', choice(3)],
        ]),
      },
    ],
    locked: new Set(['upper_bracket_height', 'shim_count']),
  };
  const turned: Plan = {
    ...inOrder,
    inputs: new Map([...base.inputs].reverse()),
    scenarios: [
      {
        overrides: new Map([
          ['shim_count', { origin: 'choice', value: 3 }],
          ['strut_count', choice(1)],
        ]),
        name: 'A',
      },
    ],
    locked: new Set(['shim_count', 'upper_bracket_height']),
  };
  expect(writePlan(turned)).toBe(writePlan(inOrder));
});

it('changes one line for one value', () => {
  const before = newPlan('Boat');
  const after = { ...before, inputs: new Map(before.inputs).set('shim_count', choice(5)) };
  const lines = writePlan(before).split('\n');
  const changed = writePlan(after).split('\n');
  expect(changed).toHaveLength(lines.length);
  expect(changed.filter((line, i) => line !== lines[i])).toEqual([
    '    { "name": "shim_count", "value": 5, "origin": "choice" },',
  ]);
});
