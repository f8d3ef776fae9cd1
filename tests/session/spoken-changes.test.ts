import { describe, expect, it } from 'vitest';
import { setLocked } from '../../src/plan/edit/settings.ts';
import { setTableRows } from '../../src/plan/edit.ts';
import { newPlan } from '../../src/plan/new-plan.ts';
import { Session } from '../../src/session/session.ts';
import { spokenChanges } from '../../src/session/spoken-changes.ts';
import { takeOver, takeOverFor } from '../../src/session/survey/take-over.ts';

/** What is said of each edit, and of taking it back. */
function said(session: Session, edit: () => void): readonly (readonly string[])[] {
  const before = session.plan;
  edit();
  const after = session.plan;
  expect(after).not.toBe(before);
  return [spokenChanges(before, after), spokenChanges(after, before)];
}

/** A face that leans 1 in 4, one row of it 90 mm off. */
const rows = (off: number) =>
  [0, 150, 300, 450, 600, 750, 900].map((height, at) => ({
    values: [height, 700 - height / 4 + (at === 6 ? off : 0)],
    note: null,
  }));

const TABLE = 'transom_readings';

describe('what is said of an edit', () => {
  it('tells of locks, and of taking them off', () => {
    const session = new Session(newPlan('x'));
    expect(
      said(session, () => session.edit('Lock', (plan) => setLocked(plan, 'upper_bracket_height', true))),
    ).toEqual([['Height of the upper bracket is locked.'], ['Height of the upper bracket is unlocked.']]);
  });

  it('tells of a reading that follows the survey', () => {
    const session = new Session(newPlan('x'));
    session.edit('Rows', (plan) => setTableRows(plan, TABLE, rows(0)));
    const offer = takeOverFor(session.plan, 'transom_rake');
    if (offer === undefined) throw new Error('nothing is offered');
    expect(said(session, () => takeOver(session, offer, 'Slope'))).toEqual([
      ['Slope of the transom from upright now follows the survey.'],
      ['Slope of the transom from upright no longer follows the survey.'],
    ]);
  });

  it('tells of a row that does not fit, once', () => {
    const session = new Session(newPlan('x'));
    session.edit('Rows', (plan) => setTableRows(plan, TABLE, rows(0)));
    expect(said(session, () => session.edit('Row', (plan) => setTableRows(plan, TABLE, rows(90))))).toEqual([
      ['Row 7 of Plumb line to the transom does not fit the others: measure it again.'],
      [],
    ]);
  });

  it('says nothing of a value: its field says it', () => {
    const session = new Session(newPlan('x'));
    expect(said(session, () => session.choose('shim_count', 3))).toEqual([[], []]);
  });
});
