import { describe, expect, it } from 'vitest';
import {
  goOn,
  keepScenario,
  lockAsDrilled,
  setFitted,
  setHandover,
  setLocked,
  setReading,
  setStep,
  untick,
} from '../../../src/plan/edit.ts';
import { openPlan } from '../../../src/plan/file/open-plan.ts';
import { writePlan } from '../../../src/plan/file/write-plan.ts';
import { newPlan } from '../../../src/plan/new-plan.ts';
import { readingOf } from '../../../src/plan/plan.ts';
import { planFrom, whyFrom } from './edits.ts';

const base = newPlan('Boat');

describe('what is kept of the day', () => {
  it('is a reading in place of a planned value, which leaves the plan itself alone', () => {
    const plan = planFrom(setFitted(base, 'upper_bracket_height', { value: 803, origin: 'reading' }));
    expect(plan.fit.fitted.get('upper_bracket_height')?.value).toBe(803);
    expect(plan.inputs).toBe(base.inputs);
    expect(planFrom(setFitted(plan, 'upper_bracket_height', undefined)).fit.fitted.size).toBe(0);
  });

  it('refuses what cannot be, by name', () => {
    const reading = (value: number) => ({ value, origin: 'reading' as const });
    expect(whyFrom(setFitted(base, 'no_such', reading(1)))).toContain('no_such');
    expect(whyFrom(setFitted(base, 'shim_count', reading(2.5)))).toContain('Shims');
    expect(whyFrom(setFitted(base, 'shim_count', { ...reading(2), offBy: -1 }))).toContain('off by -1');
    expect(whyFrom(setFitted(base, 'shaft_lean', { ...reading(0), formula: '=1' }))).toContain('formula');
    expect(whyFrom(setStep(base, { step: 'pilot', done: true, value: Number.NaN }))).toContain('number');
    expect(whyFrom(setStep(base, { step: 'first hole', done: true }))).toContain('first hole');
    expect(whyFrom(setHandover(base, 'fitted by', 'x'))).toContain('fitted by');
    expect(whyFrom(setHandover(base, 'who', 'x'.repeat(5000)))).toContain('4096');
  });

  it('is one row for each step, and none for a step that holds nothing', () => {
    const ticked = planFrom(setStep(base, { step: 'pilot', done: true, who: 'R.', when: '2031-04-09' }));
    const read = planFrom(setStep(ticked, { step: 'pilot', done: true, value: 18.5 }));
    expect(read.fit.steps).toEqual([{ step: 'pilot', done: true, value: 18.5 }]);
    expect(planFrom(setStep(read, { step: 'pilot', done: false })).fit.steps).toEqual([]);
    expect(planFrom(setStep(base, { step: 'pilot', done: false }))).toBe(base);
  });

  it('goes to the file and comes back', () => {
    const one = planFrom(setFitted(base, 'shim_count', { value: 4, origin: 'reading', who: 'R.' }));
    const two = planFrom(setStep(one, { step: 'pilot', done: true, value: 18.5, when: '2031-04-09' }));
    const plan = planFrom(setHandover(two, 'fitted_by', 'R. and the yard'));
    const opened = openPlan(writePlan(plan));
    expect(opened.ok && opened.plan.fit).toEqual(plan.fit);
  });
});

describe('a tick that is taken off', () => {
  const by = { who: 'R.', when: '2031-04-09 10:12' };
  const ticked = planFrom(setStep(base, { step: 'pilot', done: true, value: 18.5, ...by }));

  it('leaves what was read, and who had ticked it', () => {
    const plan = planFrom(untick(ticked, 'pilot', { who: 'M.', when: '2031-04-09 11:00' }));
    expect(plan.fit.steps).toEqual([{ step: 'pilot', done: false, value: 18.5 }]);
    expect(plan.fit.unticked).toEqual([
      { step: 'pilot', tickedBy: 'R.', tickedWhen: '2031-04-09 10:12', who: 'M.', when: '2031-04-09 11:00' },
    ]);
    expect(planFrom(untick(base, 'pilot', by))).toBe(base);
  });
});

describe('going on all the same', () => {
  it('takes a reason, and keeps every one', () => {
    const went = { step: 'first_hole', because: 'the yard says so', despite: [] };
    const once = planFrom(goOn(base, went));
    expect(planFrom(goOn(once, { ...went, because: 'again' })).fit.wentOn.map((it) => it.because)).toEqual([
      'the yard says so',
      'again',
    ]);
    expect(whyFrom(goOn(base, { ...went, because: '  ' }))).toContain('reason');
  });
});

describe('locking as drilled', () => {
  const by = { who: 'R.', when: '2031-04-09 10:12' };
  const read = (plan: typeof base, name: string, value: number) =>
    planFrom(setFitted(plan, name, { value, origin: 'reading' }));
  const name = 'upper_bracket_height';

  it('locks what was read, in the base and in every scenario, and keeps what was planned', () => {
    const own = planFrom(keepScenario(base, 'Raised'));
    const raised = planFrom(setReading(own, name, { value: 900, origin: 'choice' }));
    const plan = planFrom(lockAsDrilled(read(raised, name, 806), [name], by));
    expect(plan.locked.has(name)).toBe(true);
    expect([null, 'Raised'].map((it) => readingOf(plan, name, it)?.value)).toEqual([806, 806]);
    expect(plan.fit.drilled.get(name)).toEqual({ planned: 900, ...by });
    // A second lock, of a reading taken again, still tells the plan of the first day.
    const again = planFrom(lockAsDrilled(read(plan, name, 808), [name], by));
    expect(readingOf(again, name)?.value).toBe(808);
    expect(again.fit.drilled.get(name)?.planned).toBe(900);
  });

  it('is what any lock does where there is a reading', () => {
    const plan = planFrom(setLocked(read(base, name, 806), name, true));
    expect(readingOf(plan, name)?.value).toBe(806);
    expect(plan.fit.drilled.get(name)).toEqual({ planned: 800 });
    expect(readingOf(planFrom(setLocked(base, name, true)), name)?.value).toBe(800);
  });

  it('locks nothing when one of them was not read, and nothing that is not chosen', () => {
    const why = whyFrom(lockAsDrilled(read(base, name, 806), [name, 'shaft_offset'], by));
    expect(why).toContain('Shaft to the side of the centreline has no reading');
    expect(whyFrom(lockAsDrilled(base, ['transom_thickness'], by))).toContain('not chosen');
  });
});
