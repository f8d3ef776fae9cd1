import { describe, expect, it } from 'vitest';
import { keepScenario, switchTo } from '../../src/plan/edit/scenarios.ts';
import { newPlan } from '../../src/plan/new-plan.ts';
import { Session } from '../../src/session/session.ts';
import { Workbook } from '../../src/workbook/workbook.ts';

const opened = (): Session => {
  const session = new Session(newPlan('x'));
  session.attach(new Workbook(session.plan));
  return session;
};

describe('a session', () => {
  it('answers, undoes and redoes', () => {
    const session = opened();
    expect(session.choose('shim_count', 3)).toEqual({ ok: true });
    expect(session.value('rudder_gap')).toBeCloseTo(44.7009, 4);
    session.undo();
    expect(session.value('rudder_gap')).toBeCloseTo(56.886, 3);
    session.redo();
    expect(session.value('shim_count')).toBe(3);
  });

  it('counts one gesture as one step', () => {
    const session = opened();
    for (const height of [810, 820, 830]) session.choose('upper_bracket_height', height, 'drag 1');
    session.undo();
    expect(session.value('upper_bracket_height')).toBe(800);
  });

  it('takes a gesture back as if it had not begun: value, undo and redo', () => {
    const session = opened();
    session.choose('shim_count', 3);
    session.choose('shim_count', 2);
    session.undo();
    for (const height of [810, 820]) session.choose('upper_bracket_height', height, 'drag 2');
    session.takeBack('drag 2');
    expect(session.value('upper_bracket_height')).toBe(800);
    expect(session.undoes).toBe('Shims under the lower bracket');
    session.redo();
    expect(session.value('shim_count')).toBe(2);
    session.takeBack('drag 2');
    expect(session.value('shim_count')).toBe(2);
  });

  it('counts what a study is set to as no step: undo goes past it and leaves it, redo too', () => {
    const session = opened();
    session.choose('shim_count', 3);
    session.arrange('sweep', { input: 'shim_count' });
    expect(session.undoes).toBe('Shims under the lower bracket');
    session.undo();
    expect(session.value('shim_count')).toBe(4);
    session.arrange('sweep', { input: 'transom_rake' });
    session.redo();
    expect(session.value('shim_count')).toBe(3);
    expect(session.plan.studies).toEqual([{ study: 'sweep', settings: { input: 'transom_rake' } }]);
  });

  it('keeps a refused text with its reason and the last good value in use', () => {
    const session = opened();
    expect(session.enter('shim_count', '3.5')).toMatchObject({ ok: false });
    expect(session.draft('shim_count')).toMatchObject({ typed: '3.5' });
    expect(session.value('shim_count')).toBe(4);
  });

  it('tells its listeners that a refused text is gone when the value in use is typed again', () => {
    const session = opened();
    session.enter('shim_count', '4');
    session.enter('shim_count', '3.5');
    let heard = 0;
    session.subscribe(() => heard++);
    expect(session.enter('shim_count', '4')).toEqual({ ok: true });
    expect(session.draft('shim_count')).toBeUndefined();
    expect(heard).toBeGreaterThan(0);
  });

  it('edits a choice in the active scenario and a boat reading in the base', () => {
    const session = opened();
    session.edit('keep', (plan) => keepScenario(plan, 'Evening'));
    session.choose('shim_count', 5);
    session.choose('boat_speed', 7);
    session.edit('show', (plan) => switchTo(plan, null));
    expect(session.value('shim_count')).toBe(4);
    expect(session.value('boat_speed')).toBe(7);
  });

  it('leaves objects that did not change as they were', () => {
    const session = opened();
    const before = session.judgement.limits;
    session.choose('laminate_shear', 4);
    const same = session.judgement.limits.filter((it, at) => it === before[at]);
    expect(same.length).toBeGreaterThan(before.length - 5);
    expect(same.length).toBeLessThan(before.length);
  });
});
