import { describe, expect, it } from 'vitest';
import {
  editGoesTo,
  followBase,
  keepScenario,
  setApart,
  setLocked,
  setReading,
  switchTo,
} from '../../../src/plan/edit.ts';
import { newPlan } from '../../../src/plan/new-plan.ts';
import { type Plan, type Reading, readingOf } from '../../../src/plan/plan.ts';
import { planFrom, whyFrom } from './edits.ts';

const base = newPlan('Boat');
const withA = planFrom(keepScenario(base, 'A'));
const reading = (value: Reading['value'], more: Partial<Reading> = {}): Reading => ({
  value,
  origin: 'reading',
  ...more,
});
const values = (plan: Plan, name: string) => ({
  base: plan.inputs.get(name)?.value,
  a: readingOf(plan, name, 'A')?.value,
});

describe('where an edit goes', () => {
  it('goes to the base while the base is shown', () => {
    expect(editGoesTo(base, 'shim_count')).toBeNull();
    const plan = planFrom(setReading(base, 'shim_count', reading(3)));
    expect(plan.inputs.get('shim_count')?.value).toBe(3);
  });

  it('takes a choice to the scenario shown, and leaves the base alone', () => {
    expect(editGoesTo(withA, 'shim_count')).toBe('A');
    const plan = planFrom(setReading(withA, 'shim_count', reading(3)));
    expect(values(plan, 'shim_count')).toEqual({ base: 4, a: 3 });
  });

  it('takes a reading of the boat to the base, and so to every scenario', () => {
    expect(editGoesTo(withA, 'transom_rake')).toBeNull();
    const plan = planFrom(setReading(withA, 'transom_rake', reading(-8)));
    expect(values(plan, 'transom_rake')).toEqual({ base: -8, a: -8 });
  });

  it('takes it to the scenario once it was set apart there', () => {
    const apart = planFrom(setApart(withA, 'boat_speed'));
    expect(values(apart, 'boat_speed')).toEqual({ base: 8.75, a: 8.75 });
    expect(editGoesTo(apart, 'boat_speed')).toBe('A');
    const plan = planFrom(setReading(apart, 'boat_speed', reading(6)));
    expect(values(plan, 'boat_speed')).toEqual({ base: 8.75, a: 6 });
    expect(values(planFrom(followBase(plan, 'boat_speed')), 'boat_speed')).toEqual({ base: 8.75, a: 8.75 });
  });

  it('sets nothing apart while the base is shown', () => {
    expect(whyFrom(setApart(base, 'boat_speed'))).toContain('switch to a scenario');
  });

  it('follows the base again when a choice is dropped', () => {
    const plan = planFrom(followBase(planFrom(setReading(withA, 'shim_count', reading(3))), 'shim_count'));
    expect(values(plan, 'shim_count')).toEqual({ base: 4, a: 4 });
    expect(plan.scenarios[0]?.overrides.has('shim_count')).toBe(false);
  });
});

describe('a reading', () => {
  it('is kept whole, and the plan it came from is left alone', () => {
    const full = reading(889, {
      typed: '35 in',
      unit: 'in',
      offBy: 3,
      who: 'a',
      when: 'b',
      with: 'c',
      note: 'd\ne',
    });
    const plan = planFrom(setReading(base, 'transom_top', full));
    expect(plan.inputs.get('transom_top')).toEqual(full);
    expect(base.inputs.get('transom_top')?.value).toBe(900);
    expect(plan.inputs.get('tube_od')).toBe(base.inputs.get('tube_od'));
    expect([...plan.inputs.keys()]).toEqual([...base.inputs.keys()]);
  });

  it.each([
    ['no_such', reading(1), 'There is no input named no_such.'],
    ['standoff', reading(1), 'There is no input named standoff.'],
    ['transom_rake', reading(80), 'cannot be 80 deg'],
    ['shim_count', reading(2.5), 'whole number'],
    ['tube_wall', reading(-1), 'cannot be -1 mm'],
    ['tube_od', reading('wide'), 'is a number, not wide'],
    ['tube_wall', reading(31), 'the wall of the shaft tube must be less than half its diameter'],
    ['tube_od', reading(60, { offBy: -1 }), 'cannot be off by -1'],
    ['tube_od', reading(60, { offBy: Number.NaN }), 'cannot be off by NaN'],
    ['tube_od', reading(60, { note: 'x'.repeat(5000) }), 'is 5000 characters long'],
    ['tube_od', reading(60, { who: 'a\nb' }), 'holds U+000A'],
    ['tube_od', reading(60, { note: 'a\u202Eb' }), 'holds U+202E'],
    ['tube_od', reading(null, { formula: 'tube_wall' }), 'starts with ='],
  ])('%s is refused when it cannot be', (name, given, why) => {
    expect(whyFrom(setReading(base, name, given))).toContain(why);
  });

  it('may be empty, or follow a formula whatever its last value was', () => {
    expect(planFrom(setReading(base, 'tube_od', reading(null))).inputs.get('tube_od')?.value).toBeNull();
    const formula = reading(-5, { formula: '=tube_wall * 2' });
    expect(planFrom(setReading(base, 'tube_od', formula)).inputs.get('tube_od')).toEqual(formula);
  });

  it('is refused when it clashes in a scenario that is not shown, and that one is named', () => {
    const apart = planFrom(setReading(planFrom(setApart(withA, 'tube_wall')), 'tube_wall', reading(8)));
    const shown = planFrom(switchTo(apart, null));
    expect(whyFrom(setReading(shown, 'tube_od', reading(52)))).toMatch(/^In the scenario “A”/);
    expect(
      planFrom(setReading(shown, 'stock_diameter', reading(20))).inputs.get('stock_diameter')?.value,
    ).toBe(20);
  });
});

describe('a lock', () => {
  const locked = planFrom(setLocked(base, 'port_foot_y', true));

  it('keeps the value, in every scenario', () => {
    expect(whyFrom(setReading(locked, 'port_foot_y', reading(-200)))).toContain('Take the lock off');
    expect(whyFrom(setReading(planFrom(keepScenario(locked, 'A')), 'port_foot_y', reading(-200)))).toContain(
      'lock',
    );
    expect(whyFrom(setReading(locked, 'port_foot_y', reading(-170, { formula: '=1' })))).toContain('lock');
  });

  it('lets what is noted about it change', () => {
    const noted = reading(-170, { note: 'drilled in May' });
    expect(planFrom(setReading(locked, 'port_foot_y', noted)).inputs.get('port_foot_y')).toEqual(noted);
  });

  it('comes off again', () => {
    const free = planFrom(setLocked(locked, 'port_foot_y', false));
    expect(planFrom(setReading(free, 'port_foot_y', reading(-200))).inputs.get('port_foot_y')?.value).toBe(
      -200,
    );
  });

  it('holds an override that would go back to another base value', () => {
    const moved = planFrom(setReading(withA, 'port_foot_y', reading(-200)));
    const both = planFrom(setLocked(moved, 'port_foot_y', true));
    expect(whyFrom(followBase(both, 'port_foot_y'))).toContain('lock');
  });

  it('is for choices alone', () => {
    expect(whyFrom(setLocked(base, 'tube_od', true))).toContain('cannot be locked');
    expect(whyFrom(setLocked(base, 'no_such', true))).toBe('There is no input named no_such.');
    expect(planFrom(setLocked(locked, 'port_foot_y', true))).toBe(locked);
  });
});
