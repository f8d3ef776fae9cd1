import { describe, expect, it } from 'vitest';
import { setFitted, setReading } from '../../../src/plan/edit.ts';
import { newPlan } from '../../../src/plan/new-plan.ts';
import type { Plan } from '../../../src/plan/plan.ts';
import { asFitted } from '../../../src/session/fit-up/as-fitted.ts';
import { enterFitted } from '../../../src/session/fit-up/enter-fitted.ts';
import { readAtStep, stepDone, tickStep, untickStep } from '../../../src/session/fit-up/steps-done.ts';
import { Session } from '../../../src/session/session.ts';
import { Workbook } from '../../../src/workbook/workbook.ts';
import { planFrom } from '../../plan/edit/edits.ts';

const planned = newPlan('Boat');
const by = { who: 'R.', when: '2031-04-09' };

const fit = (plan: Plan, name: string, value: number): Plan =>
  planFrom(setFitted(plan, name, { value, origin: 'reading' }));

describe('a plan as fitted', () => {
  it('is the plan with those values, to the last digit, and leaves the plan as it was', () => {
    const fitted = fit(fit(planned, 'upper_bracket_height', 806), 'port_foot_y', -178);
    const changed = ['upper_bracket_height', 'port_foot_y'].reduce(
      (plan, name) =>
        planFrom(setReading(plan, name, { value: name === 'port_foot_y' ? -178 : 806, origin: 'choice' })),
      planned,
    );
    const bench = new Workbook(fitted);
    const other = new Workbook(changed);
    const found = asFitted(bench, fitted);
    for (const name of other.names) expect(found.answers.get(name), name).toEqual(other.answer(name));
    expect(found.limits).toEqual(other.judgement().limits);
    expect(found.cuts[0]?.length?.value).toBe(other.answer('port_strut_cut').value);
    expect(found.cuts[0]?.planned).toBeCloseTo(205.1823, 3);
    expect(bench.answer('upper_bracket_height').value).toBe(800);
  });

  it('says how far the struts may be off, more when a foot is read less well', () => {
    const bench = new Workbook(planned);
    const before = asFitted(bench, planned).cuts[0]?.length;
    const worse = planFrom(setFitted(planned, 'port_foot_y', { value: -170, offBy: 10, origin: 'reading' }));
    const after = asFitted(bench, worse).cuts[0]?.length;
    expect(before?.give).toBeGreaterThan(0);
    expect(before?.most).toBeGreaterThan(before?.give ?? 0);
    // Eight more millimetres to the side, times the slope of the strut in plan: (170 − 40)/255.2.
    expect((after?.most ?? 0) - (before?.most ?? 0)).toBeCloseTo((8 * 130) / 255.182, 1);
    expect(after?.long).toBe(Math.ceil(after?.most ?? 0));
  });

  it('has one cut for one strut', () => {
    const single = planFrom(setReading(planned, 'strut_count', { value: 1, origin: 'choice' }));
    const { cuts } = asFitted(new Workbook(single), single);
    expect(cuts.map((it) => it.side)).toEqual(['single']);
    expect(cuts[0]?.length?.value).toBeCloseTo(169.586, 3);
  });
});

describe('what a person enters on the day', () => {
  const opened = (): Session => {
    const session = new Session(planned);
    session.attach(new Workbook(planned));
    return session;
  };

  it('keeps the reading with who and when, refuses what cannot be, and undoes', () => {
    const session = opened();
    expect(enterFitted(session, 'upper_bracket_height', '31 3/4 in', by)).toEqual({ ok: true });
    expect(session.plan.fit.fitted.get('upper_bracket_height')).toMatchObject({
      value: 806.45,
      who: 'R.',
      when: '2031-04-09',
      origin: 'reading',
    });
    expect(session.value('upper_bracket_height')).toBe(800);
    expect(enterFitted(session, 'shim_count', '3.5', by)).toMatchObject({ ok: false });
    expect(enterFitted(session, 'upper_bracket_height', '', by)).toEqual({ ok: true });
    expect(session.plan.fit.fitted.size).toBe(0);
    session.undo();
    expect(session.plan.fit.fitted.size).toBe(1);
  });

  it('ticks a step without losing what was read at it', () => {
    const session = opened();
    const asked = { step: 'pilot', label: 'Thickness', unit: 'mm' } as const;
    expect(readAtStep(session, asked, '18,5', by)).toEqual({ ok: true });
    tickStep(session, 'pilot', 'Pilot', by);
    expect(stepDone(session.plan, 'pilot')).toEqual({ step: 'pilot', done: true, value: 18.5, ...by });
    untickStep(session, 'pilot', 'Pilot', { who: 'M.', when: '2031-04-10' });
    expect(stepDone(session.plan, 'pilot')).toEqual({ step: 'pilot', done: false, value: 18.5 });
    expect(session.plan.fit.unticked).toEqual([
      { step: 'pilot', tickedBy: 'R.', tickedWhen: '2031-04-09', who: 'M.', when: '2031-04-10' },
    ]);
    expect(readAtStep(session, asked, 'x', by)).toMatchObject({ ok: false });
    readAtStep(session, asked, '', by);
    expect(stepDone(session.plan, 'pilot')).toBeUndefined();
  });
});
