import { describe, expect, it } from 'vitest';
import { setFitted, setHandover, setStep } from '../../../src/plan/edit.ts';
import { openPlan } from '../../../src/plan/file/open-plan.ts';
import { writePlan } from '../../../src/plan/file/write-plan.ts';
import { newPlan } from '../../../src/plan/new-plan.ts';
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
