import { describe, expect, it } from 'vitest';
import type { Edited } from '../../../src/plan/edit.ts';
import {
  keepScenario,
  setNotes,
  setOwnCell,
  setOwnLimit,
  setReading,
  setTitle,
} from '../../../src/plan/edit.ts';
import type { Reason } from '../../../src/plan/file/open-plan.ts';
import { writePlan } from '../../../src/plan/file/write-plan.ts';
import { mailLink } from '../../../src/plan/mail.ts';
import { newPlan } from '../../../src/plan/new-plan.ts';
import type { Plan } from '../../../src/plan/plan.ts';
import { copyWords } from '../../../src/session/plan-file/copies.ts';
import { Guests, guestsOf } from '../../../src/session/plan-file/guests.ts';
import { mailLines } from '../../../src/session/plan-file/mail-lines.ts';
import { REASONS } from '../../../src/session/plan-file/reasons.ts';
import { whatChanges } from '../../../src/session/plan-file/what-changes.ts';
import { Workbook } from '../../../src/workbook/workbook.ts';

const must = (edited: Edited): Plan => {
  if (!edited.ok) throw new Error(edited.why);
  return edited.plan;
};

const plan = newPlan('Mine');

describe('REASONS', () => {
  it('words every reason apart', () => {
    const all: readonly Reason[] = ['not a plan', 'too new', 'damaged', 'too large', 'step failed'];
    expect(Object.keys(REASONS).toSorted()).toEqual([...all].toSorted());
    expect(new Set(Object.values(REASONS).map((it) => it.title)).size).toBe(5);
  });
});

describe('whatChanges', () => {
  it('finds nothing between a plan and itself', () => {
    expect(whatChanges(plan, newPlan('Mine'))).toEqual([]);
  });

  it('says each input with its unit and origin, before and after', () => {
    const after = must(setReading(plan, 'transom_top', { value: 870, origin: 'reading' }));
    expect(whatChanges({ ...plan, units: 'mm' }, { ...after, units: 'mm' })).toEqual([
      {
        title: 'Inputs',
        changes: [
          {
            title: 'Height of the transom’s upper edge',
            name: 'transom_top',
            before: '900 mm, stand-in',
            after: '870 mm, reading',
          },
        ],
      },
    ]);
  });

  it('says what is added and what would go', () => {
    const cell = { name: 'weight', label: 'Weight aft', unit: 'kg', value: null, formula: '=gear_mass * 2' };
    const limit = { name: 'weight_own', result: 'weight', high: 70, near: 5 };
    const after = must(setOwnLimit(must(setOwnCell(must(keepScenario(plan, 'Kept')), cell)), limit));
    const groups = whatChanges(plan, must(setNotes(must(setTitle(after, 'Theirs')), 'Ask the yard')));
    expect(groups.map((it) => it.title)).toEqual([
      'The plan',
      'Scenarios',
      'Own cells and formulas',
      'Limits of your own',
    ]);
    const general = groups[0]?.changes;
    expect(general).toContainEqual({ title: 'Notes', before: null, after: 'Ask the yard' });
    expect(general).toContainEqual({ title: 'Title', before: 'Mine', after: 'Theirs' });
    expect(groups[2]?.changes[0]).toMatchObject({
      name: 'weight',
      before: null,
      after: 'Weight aft: =gear_mass * 2',
    });
    expect(groups[3]?.changes[0]).toMatchObject({ after: 'at most 70 kg, near within 5 kg' });
    const back = whatChanges(after, plan);
    expect(back.find((it) => it.title === 'Scenarios')?.changes[0]).toMatchObject({
      title: 'Kept',
      after: null,
    });
  });

  it('tells a reading that only came from elsewhere', () => {
    const reading = plan.inputs.get('shaft_length');
    if (reading === undefined) throw new Error('no shaft_length');
    const after = must(setReading(plan, 'shaft_length', { ...reading, origin: 'manual' }));
    expect(whatChanges(plan, after)[0]?.changes[0]?.after).toContain('gear’s manual');
  });
});

describe('mailLines', () => {
  it('says what is outside first, and fits into a link', () => {
    const shims = plan.inputs.get('shim_count');
    if (shims === undefined) throw new Error('no shim_count');
    const three = must(setReading(plan, 'shim_count', { ...shims, value: 3 }));
    const lines = mailLines(three, new Workbook(three).judgement());
    expect(lines[0]).toMatch(/^Limits: \d+ outside, \d+ no answer, \d+ near\.$/);
    expect(lines[1]).toMatch(/^It rests on \d+ stand-ins\.$/);
    expect(lines[2]).toContain('outside, 44.7 mm');
    expect(mailLink(three, lines).length).toBeLessThanOrEqual(1500);
  });
});

describe('Guests', () => {
  const file = (text: string, size = text.length) => ({
    name: 'theirs.plan.json',
    size,
    text: async () => text,
  });

  it('shows an opened plan as a visitor', async () => {
    const guests = new Guests();
    await guests.open(file(writePlan(newPlan('Theirs'))));
    expect(guests.guest).toMatchObject({
      kind: 'visitor',
      name: 'theirs.plan.json',
      plan: { title: 'Theirs' },
    });
    guests.leave();
    expect(guests.guest).toBeUndefined();
  });

  it('keeps the text of a refused file to the letter, and takes it again once mended', async () => {
    const guests = new Guests();
    const whole = writePlan(newPlan('Theirs'));
    const cut = whole.slice(0, -10);
    await guests.open(file(cut));
    expect(guests.guest).toMatchObject({ kind: 'refused', reason: 'damaged', text: cut });
    guests.tryText('theirs.plan.json', whole);
    expect(guests.guest).toMatchObject({ kind: 'visitor' });
  });

  it('does not read a file that is larger than any plan', async () => {
    const guests = new Guests();
    await guests.open({ name: 'film', size: 3_000_000, text: () => expect.fail('it was read') });
    expect(guests.guest).toMatchObject({ kind: 'refused', reason: 'too large', text: undefined });
  });

  it('says when the browser cannot read the file', async () => {
    const guests = new Guests();
    await guests.open({ name: 'gone', size: 3, text: () => Promise.reject(new Error('gone')) });
    expect(guests.guest).toMatchObject({ kind: 'refused', reason: undefined, text: undefined });
  });

  it('belongs to one session', () => {
    const session = {};
    expect(guestsOf(session)).toBe(guestsOf(session));
  });
});

describe('copyWords', () => {
  it('says that a copy was saved, and when the plan has moved on since', () => {
    const copy = { name: 'mine.plan.json', plan };
    expect(copyWords(undefined, plan)).toMatch(/^No copy/);
    expect(copyWords(copy, plan)).toMatch(/^A copy was saved: mine\.plan\.json/);
    expect(copyWords(copy, newPlan('Mine'))).toContain('has changed since');
  });
});
