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
import { mailLink } from '../../../src/plan/mail.ts';
import { newPlan } from '../../../src/plan/new-plan.ts';
import type { Plan } from '../../../src/plan/plan.ts';
import { fileNameOf } from '../../../src/session/plan-file/file-name.ts';
import { mailLines } from '../../../src/session/plan-file/mail-lines.ts';
import { REASONS } from '../../../src/session/plan-file/reasons.ts';
import { whatChanges } from '../../../src/session/plan-file/what-changes.ts';
import { Workbook } from '../../../src/workbook/workbook.ts';

const must = (edited: Edited): Plan => {
  if (!edited.ok) throw new Error(edited.why);
  return edited.plan;
};

const plan = newPlan('Mine');

describe('fileNameOf', () => {
  it.each([
    ['My boat, 2nd try', 'my-boat-2nd-try.plan.json'],
    ['Höhe / Breite', 'hohe-breite.plan.json'],
    ['…', 'plan.plan.json'],
    ['../etc', 'etc.plan.json'],
  ])('makes a name any system takes of %j', (title, expected) => {
    expect(fileNameOf(title)).toBe(expected);
  });
});

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
  it('says what is past first, and fits into a link', () => {
    const shims = plan.inputs.get('shim_count');
    if (shims === undefined) throw new Error('no shim_count');
    const three = must(setReading(plan, 'shim_count', { ...shims, value: 3 }));
    const lines = mailLines(three, new Workbook(three).judgement());
    expect(lines[0]).toMatch(/^Limits: \d+ past, \d+ no answer, \d+ near\.$/);
    expect(lines[1]).toMatch(/^It rests on \d+ stand-ins\.$/);
    expect(lines[2]).toContain('past, 44.7 mm');
    expect(mailLink(three, lines).length).toBeLessThanOrEqual(1500);
  });
});
