import { describe, expect, it } from 'vitest';
import {
  CURRENT_VERSION,
  gapIn,
  MIGRATIONS,
  type Migration,
  migrate,
  versionAfter,
} from '../../../src/plan/file/migrations.ts';
import { openWith } from '../../../src/plan/file/open-plan.ts';
import { writePlan } from '../../../src/plan/file/write-plan.ts';
import { newPlan } from '../../../src/plan/new-plan.ts';

/** A pretend past in which the title was called something else, and the notes were a list. */
const renamed: Migration = {
  from: 1,
  run: ({ heading, ...rest }) => ({ ...rest, title: heading }),
};
const joined: Migration = {
  from: 2,
  run: (document) => ({ ...document, notes: (document.notes as string[]).join('\n') }),
};

const today = JSON.parse(writePlan(newPlan('Boat'))) as Record<string, unknown>;
const { title: _title, ...rest } = today;
const past = (version: number, fields: object) => JSON.stringify({ ...rest, version, ...fields });

describe('the steps between file versions', () => {
  it('run from version 1 without a gap', () => {
    expect(gapIn(MIGRATIONS)).toBeUndefined();
    expect(CURRENT_VERSION).toBe(MIGRATIONS.length + 1);
  });

  it('show a gap', () => {
    expect(gapIn([renamed, joined])).toBeUndefined();
    expect(gapIn([joined])).toBe('Step 1 takes version 2; it should take version 1.');
    expect(gapIn([renamed, renamed])).toBe('Step 2 takes version 1; it should take version 2.');
  });

  it('are taken one after the other from the version of the document', () => {
    const steps = [renamed, joined];
    expect(versionAfter(steps)).toBe(3);
    expect(migrate({ version: 1, heading: 'a', notes: ['b', 'c'] }, 1, steps)).toEqual({
      ok: true,
      document: { version: 3, title: 'a', notes: 'b\nc' },
    });
    expect(migrate({ version: 2, title: 'a', notes: ['b'] }, 2, steps)).toEqual({
      ok: true,
      document: { version: 3, title: 'a', notes: 'b' },
    });
    expect(migrate({ version: 3, title: 'a', notes: 'b' }, 3, steps)).toMatchObject({ ok: true });
  });

  it('bring an old file to a plan', () => {
    const steps = [renamed, joined];
    for (const text of [
      past(1, { heading: 'Old', notes: ['x', 'y'] }),
      past(2, { title: 'Old', notes: ['x', 'y'] }),
    ]) {
      const opened = openWith(text, steps);
      expect(opened.ok && [opened.plan.title, opened.plan.notes]).toEqual(['Old', 'x\ny']);
    }
    expect(openWith(past(4, { title: 'Old', notes: '' }), steps)).toMatchObject({
      ok: false,
      reason: 'too new',
    });
  });

  it('name the step that failed', () => {
    expect(openWith(past(2, { title: 'Old', notes: 'no list' }), [renamed, joined])).toEqual({
      ok: false,
      reason: 'step failed',
      why: 'The plan could not be brought from file version 2 to 3.',
    });
  });

  it('leave the document they were given alone', () => {
    const document = Object.freeze({ version: 1, heading: 'a', notes: Object.freeze(['b']) });
    expect(migrate(document, 1, [renamed, joined])).toMatchObject({ ok: true });
    expect(document).toEqual({ version: 1, heading: 'a', notes: ['b'] });
  });
});
