import { expect, it } from 'vitest';
import { setNotes, setStudy } from '../../../src/plan/edit.ts';
import { newPlan } from '../../../src/plan/new-plan.ts';
import { Session } from '../../../src/session/session.ts';
import { studiedPlan } from '../../../src/session/studies/studied-plan.ts';

it('stays the same while only settings and notes change', () => {
  const session = new Session(newPlan('Boat'));
  const first = studiedPlan(session);
  session.edit('settings', (plan) => setStudy(plan, 'map', { across: 'shim_count' }));
  session.edit('notes', (plan) => setNotes(plan, 'a note'));
  expect(session.plan).not.toBe(first);
  expect(studiedPlan(session)).toBe(first);
  session.choose('shim_count', 7);
  expect(studiedPlan(session)).toBe(session.plan);
});
