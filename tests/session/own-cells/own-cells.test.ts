import { describe, expect, it, vi } from 'vitest';
import { setOwnCell, setOwnLimit } from '../../../src/plan/edit.ts';
import { newPlan } from '../../../src/plan/new-plan.ts';
import { ownNameRefusal } from '../../../src/plan/own-name.ts';
import type { Plan } from '../../../src/plan/plan.ts';
import { KeptDrafts, keptDraftsOf } from '../../../src/session/kept-drafts.ts';
import { changeLimit } from '../../../src/session/own-cells/change-limit.ts';
import { insertInto } from '../../../src/session/own-cells/insert-into.ts';
import { nameFrom } from '../../../src/session/own-cells/name-from.ts';
import { readContent } from '../../../src/session/own-cells/read-content.ts';
import { limitNameFor, readLimit } from '../../../src/session/own-cells/read-limit.ts';

const plan = newPlan('Test');

const withCell = (to: Plan, name: string, unit = 'mm'): Plan => {
  const edited = setOwnCell(to, { name, label: name, unit, value: 1 });
  if (!edited.ok) throw new Error(edited.why);
  return edited.plan;
};

describe('nameFrom', () => {
  const refused = (it: Plan) => (name: string) => ownNameRefusal(it, name) !== undefined;

  it.each([
    ['Weight aft', 'weight_aft'],
    ['  Höhe über Deck (mm) ', 'hohe_uber_deck_mm'],
    ['2nd try', 'nd_try'],
    ['Pi', 'pi_2'],
    ['Standoff', 'standoff_2'],
    ['a1', 'a1_2'],
    ['…', ''],
  ])('makes of %j', (label, expected) => {
    expect(nameFrom(label, refused(plan))).toBe(expected);
  });

  it('counts on while a name is taken', () => {
    expect(nameFrom('Weight', refused(withCell(withCell(plan, 'weight'), 'weight_2')))).toBe('weight_3');
  });
});

describe('readContent', () => {
  it('keeps a formula as typed', () => {
    expect(readContent(plan, ' =standoff + 10 ', 'Mine', 'mm')).toEqual({
      ok: true,
      value: null,
      formula: '=standoff + 10',
    });
  });

  it.each(['=standof + 1', '=VLOOKUP(1)', '=(', '=A1'])('refuses %j with a sentence', (typed) => {
    const read = readContent(plan, typed, 'Mine', 'mm');
    expect(read.ok ? '' : read.why).toMatch(/\.$/);
  });

  it.each([
    ['2 3/8 in', 'mm', 60.325],
    ['60', 'mm', 60],
    ['12 deg', 'deg', 12],
    ['3', '', 3],
    ['7', 'buckets', 7],
  ])('reads %j in %j', (typed, unit, value) => {
    expect(readContent(plan, typed, 'Mine', unit)).toEqual({ ok: true, value });
  });

  it('takes nothing as empty and refuses what is no number', () => {
    expect(readContent(plan, ' ', 'Mine', 'mm')).toEqual({ ok: true, value: null });
    expect(readContent(plan, 'tall', 'Mine', 'mm').ok).toBe(false);
    expect(readContent(plan, '3 kn', 'Mine', 'mm').ok).toBe(false);
  });
});

describe('readLimit', () => {
  const draft = { result: 'rudder_gap', low: '60', high: '', near: '' };

  it('reads bounds in the unit shown', () => {
    expect(readLimit(plan, draft)).toEqual({
      ok: true,
      limit: { name: 'rudder_gap_own', result: 'rudder_gap', low: 60, near: 0 },
    });
    expect(readLimit({ ...plan, units: 'in' }, { ...draft, low: '2', near: '1/2' })).toMatchObject({
      limit: { low: 50.8, near: 12.7 },
    });
  });

  it('asks for a result and for a bound', () => {
    expect(readLimit(plan, { ...draft, result: '' })).toMatchObject({ ok: false });
    const none = readLimit(plan, { ...draft, low: '' });
    expect(none.ok ? '' : none.why).toContain('a low bound');
    expect(readLimit(plan, { ...draft, high: 'wide' })).toMatchObject({ ok: false });
  });

  it('judges own cells, and gives each limit a name of its own', () => {
    const own = withCell(plan, 'weight', 'kg');
    const read = readLimit(own, { result: 'weight', low: '', high: '40', near: '' });
    if (!read.ok) throw new Error(read.why);
    const edited = setOwnLimit(own, read.limit);
    if (!edited.ok) throw new Error(edited.why);
    expect(limitNameFor(edited.plan, 'weight')).toBe('weight_own_2');
  });

  it('gives no name that the plan would refuse, however long the result’s', () => {
    const name = `${'x'.repeat(63)}y`;
    const own = withCell(plan, name);
    const read = readLimit(own, { result: name, low: '1', high: '', near: '' });
    if (!read.ok) throw new Error(read.why);
    expect(setOwnLimit(own, read.limit).ok).toBe(true);
  });
});

describe('changeLimit', () => {
  const limit = { name: 'rudder_gap_own', result: 'rudder_gap', low: 60, near: 5 };

  it('changes one side and leaves the rest', () => {
    expect(changeLimit(plan, limit, 'high', '90')).toEqual({ ok: true, limit: { ...limit, high: 90 } });
    expect(changeLimit(plan, limit, 'near', '')).toEqual({ ok: true, limit: { ...limit, near: 0 } });
    expect(changeLimit(plan, limit, 'low', '2 3/0').ok).toBe(false);
  });

  it('takes a bound away, which the plan refuses when it was the only one', () => {
    const changed = changeLimit(plan, limit, 'low', ' ');
    if (!changed.ok) throw new Error(changed.why);
    expect(changed.limit).toEqual({ name: 'rudder_gap_own', result: 'rudder_gap', near: 5 });
    expect(setOwnLimit(plan, changed.limit).ok).toBe(false);
  });
});

describe('insertInto', () => {
  it.each([
    ['', 0, 0, 'standoff', '=standoff'],
    ['=', 1, 1, 'standoff', '=standoff'],
    ['=standoff', 9, 9, 'MIN(', '=standoff MIN('],
    ['=standoff + ', 12, 12, 'lower_reach', '=standoff + lower_reach'],
    ['=a + b', 5, 6, 'lower_reach', '=a + lower_reach'],
    ['12', 2, 2, 'standoff', '=12 standoff'],
    ['=standoff', 0, 0, 'MIN(', '=MIN(standoff'],
  ])('puts into %j from %i to %i: %s', (text, from, to, insert, expected) => {
    const inserted = insertInto(text, from, to, insert);
    expect(inserted.text).toBe(expected);
    expect(inserted.text.slice(0, inserted.caret).endsWith(insert)).toBe(true);
  });
});

describe('KeptDrafts', () => {
  it('keeps a text with its reason until it is dropped, and tells', () => {
    const drafts = new KeptDrafts();
    const heard = vi.fn();
    drafts.subscribe(heard);
    drafts.keep('weight', '=x', 'There is no cell named x.');
    expect(drafts.get('weight')).toEqual({ typed: '=x', why: 'There is no cell named x.' });
    drafts.drop('weight');
    drafts.drop('weight');
    expect(drafts.get('weight')).toBeUndefined();
    expect(heard).toHaveBeenCalledTimes(2);
  });

  it('belongs to one session', () => {
    const session = {};
    expect(keptDraftsOf(session)).toBe(keptDraftsOf(session));
    expect(keptDraftsOf(session)).not.toBe(keptDraftsOf({}));
  });
});
