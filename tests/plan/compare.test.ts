import { describe, expect, it } from 'vitest';
import { inputs } from '../../src/plan/book.ts';
import { changedFromBase, compare } from '../../src/plan/compare.ts';
import { newPlan } from '../../src/plan/new-plan.ts';
import type { Plan, Reading } from '../../src/plan/plan.ts';

const choice = (value: Reading['value'], more: Partial<Reading> = {}): Reading => ({
  value,
  origin: 'choice',
  ...more,
});

const plan: Plan = {
  ...newPlan('Boat'),
  scenarios: [
    {
      name: 'A',
      overrides: new Map([
        ['shim_count', choice(3)],
        ['upper_bracket_height', choice(800)],
      ]),
    },
    {
      name: 'B',
      overrides: new Map([
        ['wedge_edge', choice(null, { formula: '=3' })],
        ['boat_speed', choice(6)],
      ]),
    },
  ],
};

describe('scenarios side by side', () => {
  const { scenarios, inputs: rows } = compare(plan);

  it('have a column for the base and each scenario, and a row for every input', () => {
    expect(scenarios).toEqual([null, 'A', 'B']);
    expect(rows.map((it) => it.name).sort()).toEqual(inputs.map((it) => it.name).sort());
  });

  it('show what differs first, both parts in the order of the workbook', () => {
    const differing = rows.filter((it) => it.differs).map((it) => it.name);
    expect(rows.slice(0, differing.length).map((it) => it.name)).toEqual(differing);
    expect(differing).toEqual(['boat_speed', 'shim_count', 'wedge_edge']);
    const rest = rows.slice(differing.length).map((it) => it.name);
    expect(rest).toEqual(inputs.map((it) => it.name).filter((name) => !differing.includes(name)));
  });

  it('show the value in each, and whether it is its own', () => {
    const row = (name: string) => rows.find((it) => it.name === name);
    expect(row('shim_count')?.readings.map((it) => it?.value)).toEqual([4, 3, 4]);
    expect(row('shim_count')?.own).toEqual([false, true, false]);
    expect(row('wedge_edge')?.readings.map((it) => it?.formula)).toEqual([undefined, undefined, '=3']);
    // An override that says what the base says is its own, and differs in nothing.
    expect(row('upper_bracket_height')).toMatchObject({ differs: false, own: [false, true, false] });
  });

  it('may be some of them only', () => {
    const some = compare(plan, ['B', null, 'gone']);
    expect(some.scenarios).toEqual(['B', null]);
    expect(some.inputs.filter((it) => it.differs).map((it) => it.name)).toEqual(['boat_speed', 'wedge_edge']);
  });

  it('say what one changes', () => {
    expect(changedFromBase(plan, 'A')).toEqual(['shim_count']);
    expect(changedFromBase(plan, 'gone')).toEqual([]);
  });
});
