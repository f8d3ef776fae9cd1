import { describe, expect, it } from 'vitest';
import { newPlan } from '../../src/plan/new-plan.ts';
import { LastGood } from '../../src/session/last-good.ts';
import { Session } from '../../src/session/session.ts';
import { Workbook } from '../../src/workbook/workbook.ts';

describe('the last good values', () => {
  it('outlast a cell that loses its answer, and are forgotten with the plan they belong to', () => {
    const session = new Session(newPlan('First'));
    session.attach(new Workbook(session.plan));
    const last = new LastGood();
    last.remember(session);
    const stood = session.value('shaft_x');
    expect(stood).toBeTypeOf('number');

    session.enter('transom_rake', '');
    last.remember(session);
    expect(session.value('shaft_x')).toBeNull();
    expect(last.value('shaft_x')).toBe(stood);

    session.open({ ...session.plan, title: 'Second' }, 'Open another plan');
    last.remember(session);
    expect(last.value('shaft_x')).toBeNull();

    session.undo();
    last.remember(session);
    expect(last.value('shaft_x')).toBeNull();
    session.workbook?.destroy();
  });
});
