import { describe, expect, it } from 'vitest';
import { orderOfWork } from '../../../src/fitting/order-of-work.ts';
import { setReading, switchTo } from '../../../src/plan/edit.ts';
import type { Plan } from '../../../src/plan/plan.ts';
import { goOnAllTheSame } from '../../../src/session/fit-up/steps-done.ts';
import { stopsNow } from '../../../src/session/fit-up/stops-now.ts';
import { Session } from '../../../src/session/session.ts';
import { Workbook } from '../../../src/workbook/workbook.ts';
import { planFrom } from '../../plan/edit/edits.ts';
import { demoPlan } from '../../support/sheets.ts';

const now = new Date(2031, 3, 9, 12, 0);
const by = { who: 'R.', when: '2031-04-09 12:00' };

const opened = (plan: Plan): Session => {
  const session = new Session(plan);
  session.attach(new Workbook(plan));
  return session;
};

function stopsAt(session: Session, name: string) {
  const steps = orderOfWork({ ask: (it) => session.value(it), units: session.plan.units });
  const step = steps.find((it) => it.name === name);
  if (step === undefined) throw new Error(`There is no step ${name}.`);
  return stopsNow(session, step, steps, session.judgement.limits, now);
}

const wrong = (session: Session, name: string): readonly string[] =>
  stopsAt(session, name)
    .filter((it) => it.kind === 'limit' || it.kind === 'stand-in')
    .map((it) => it.stop);

describe('what stops the work as the plan is', () => {
  const start = demoPlan('start');

  it('is every limit outside, and none where all are met', () => {
    const three = opened(planFrom(switchTo(start, 'Three shims')));
    expect(wrong(three, 'pilot')).toEqual(['limit_rudder_gap', 'limit_rudder_gap_swung']);
    expect(wrong(three, 'tighten_hull_feet')).toEqual(['limit_rudder_gap', 'limit_rudder_gap_swung']);
    expect(wrong(opened(planFrom(switchTo(start, 'Four shims'))), 'pilot')).toEqual([]);
  });

  it('is a stand-in under the hole that is drilled next, and not one under another', () => {
    const plan = (['lower_bolt_spacing', 'foot_bolt_spacing'] as const).reduce<Plan>(
      (it, name) =>
        planFrom(
          setReading(it, name, { value: name === 'lower_bolt_spacing' ? 140 : 80, origin: 'stand-in' }),
        ),
      planFrom(switchTo(start, 'Four shims')),
    );
    const session = opened(plan);
    expect(wrong(session, 'pilot')).toEqual(['stand_in_lower_bolt_spacing']);
    expect(wrong(session, 'one_foot_hole')).toEqual(['stand_in_foot_bolt_spacing']);
    expect(wrong(session, 'tighten_shaft')).toEqual([]);
  });

  it('is gone on with by a reason and a name, kept with the time, until it gets worse', () => {
    const session = opened(planFrom(switchTo(start, 'Three shims')));
    const stops = stopsAt(session, 'pilot');
    const go = (because: string, who: string) =>
      goOnAllTheSame(session, 'pilot', 'Pilot', stops, because, { ...by, who });
    expect(go('the yard agrees', '')).toMatchObject({ ok: false });
    expect(go('   ', 'R.')).toMatchObject({ ok: false });
    expect(session.plan.fit.wentOn).toEqual([]);
    expect(go('the yard agrees', 'R.')).toEqual({ ok: true });
    expect(session.plan.fit.wentOn[0]).toMatchObject({ step: 'pilot', because: 'the yard agrees', ...by });
    expect(stopsAt(session, 'pilot')).toEqual([]);
    session.choose('shim_count', 2);
    expect(wrong(session, 'pilot')).toEqual(['limit_rudder_gap', 'limit_rudder_gap_swung']);
    session.undo();
    session.undo();
    expect(wrong(session, 'pilot')).toHaveLength(2);
  });
});
