import { describe, expect, it } from 'vitest';
import { setLocked, setOwnCell } from '../../../src/plan/edit.ts';
import { newPlan } from '../../../src/plan/new-plan.ts';
import { Session } from '../../../src/session/session.ts';
import type { Column } from '../../../src/views/grid/columns.ts';
import { put } from '../../../src/views/grid/put.ts';
import { afterFigure, isEditable, type Look, lookOf, valueInUse } from '../../../src/views/grid/row-look.ts';
import { openSession, rowAndFacts } from './given.ts';

const lookAt = (session: Session, name: string, column: Column = 'value'): Look => {
  const { row, facts } = rowAndFacts(session, name);
  return lookOf(row, column, facts, session.plan);
};

describe('what a value shows', () => {
  it('says by its edge where it comes from', () => {
    const session = openSession();
    expect(lookAt(session, 'transom_top')).toMatchObject({
      text: '900',
      form: 'box stand-in',
      editable: true,
    });
    expect(lookAt(session, 'shim_count').form).toBe('box choice');
    session.annotate('transom_top', { origin: 'reading' });
    session.annotate('tube_od', { origin: 'manual' });
    expect(lookAt(session, 'transom_top').form).toBe('box reading');
    expect(lookAt(session, 'tube_od').form).toBe('box manual');
    // What follows a stand-in is one, and looks like one.
    session.enter('transom_top', '=transom_bottom + 860');
    expect(lookAt(session, 'transom_top')).toMatchObject({ text: '900', form: 'box stand-in' });
    session.annotate('transom_bottom', { origin: 'reading' });
    expect(lookAt(session, 'transom_top').form).toBe('plain');
  });

  it('says outside and near by plate, frame and word', () => {
    const session = openSession();
    expect(lookAt(session, 'rudder_gap')).toMatchObject({ text: '56.9', word: 'near', form: 'near' });
    session.choose('shim_count', 3);
    expect(lookAt(session, 'rudder_gap')).toMatchObject({
      text: '44.7',
      word: 'outside',
      form: 'outside',
      editable: false,
    });
    expect(lookAt(session, 'standoff')).toMatchObject({ word: '', form: 'plain' });
  });

  it('says when there is no answer, and when none is needed', () => {
    const session = openSession();
    expect(lookAt(session, 'rudder_gap_vertical')).toMatchObject({ text: '', word: 'does not apply' });
    session.enter('strut_yield', '');
    expect(lookAt(session, 'strut_yield')).toMatchObject({ text: '', word: 'empty' });
    expect(lookAt(session, 'strut_utilisation')).toMatchObject({ text: 'no answer', form: 'no-answer' });
  });

  it('keeps a refused text as typed', () => {
    const session = openSession();
    session.enter('transom_top', '2 3/0');
    expect(lookAt(session, 'transom_top')).toMatchObject({
      text: '2 3/0',
      refused: true,
      form: 'box refused',
    });
    const { facts } = rowAndFacts(session, 'transom_top');
    expect(valueInUse(facts)).toBe(900);
  });

  it('shows readings, and no answers yet, while the engine is loading', () => {
    const session = new Session(newPlan('x'));
    expect(lookAt(session, 'transom_top').text).toBe('900');
    expect(lookAt(session, 'standoff')).toMatchObject({ text: '', form: 'plain', word: '' });
  });

  it('reads yes and no', () => {
    const session = openSession();
    expect(lookAt(session, 'core_removed').text).toBe('no');
    expect(lookAt(session, 'retained').text).toBe('yes');
    expect(lookAt(session, 'core_removed', 'unit').text).toBe('');
  });
});

describe('the other columns', () => {
  it('show the unit, and inches beside it where both are shown', () => {
    expect(lookAt(openSession('mm'), 'transom_top', 'unit')).toMatchObject({ text: 'mm', word: '' });
    expect(lookAt(openSession('in'), 'transom_top', 'unit')).toMatchObject({ text: 'in', word: '' });
    expect(lookAt(openSession('both'), 'transom_top', 'unit')).toMatchObject({
      text: 'mm',
      word: '35 7⁄16 in',
    });
  });

  it('show how far a reading may be off, and nothing where it cannot be', () => {
    const session = openSession();
    expect(lookAt(session, 'transom_top', 'offBy')).toMatchObject({ text: '10', editable: true });
    expect(lookAt(session, 'lift_coefficient', 'offBy').text).toBe('0.13');
    expect(lookAt(session, 'steering_lift', 'offBy').text).toBe('0.035');
    for (const name of ['shim_count', 'core_removed', 'transom_build', 'standoff']) {
      expect(lookAt(session, name, 'offBy'), name).toMatchObject({ text: '', editable: false });
    }
    expect(lookAt(openSession('in'), 'tube_od', 'offBy').text).toBe('1⁄64');
  });

  it('say where a value comes from', () => {
    const session = openSession();
    expect(lookAt(session, 'transom_top', 'from').text).toBe('stand-in');
    expect(lookAt(session, 'shim_stack', 'from').text).toBe('from shims, shim thickness');
    session.edit('Lock', (plan) => setLocked(plan, 'shim_count', true));
    expect(lookAt(session, 'shim_count', 'from').text).toBe('already drilled');
    expect(lookAt(session, 'single_foot_height', 'from').text).toBe('counts with one strut');
    expect(lookAt(session, 'port_foot_height', 'from').text).not.toContain('counts');
  });

  it('name the scenario that has its own value', () => {
    const session = openSession();
    session.edit('Scenario', (plan) => ({
      ok: true,
      plan: { ...plan, scenarios: [{ name: 'Three shims', overrides: new Map() }], active: 'Three shims' },
    }));
    expect(lookAt(session, 'shim_count', 'from').text).toBe('choice');
    session.choose('shim_count', 3);
    expect(lookAt(session, 'shim_count', 'from').text).toBe('Three shims');
  });
});

describe('own cells', () => {
  it('can be typed in: label, value and unit', () => {
    const session = openSession();
    session.edit('New', (plan) => setOwnCell(plan, { name: 'spare', label: 'Spare', unit: 'kg', value: 4 }));
    const { row } = rowAndFacts(session, 'spare');
    expect((['label', 'value', 'unit', 'offBy', 'from'] as const).map((it) => isEditable(row, it))).toEqual([
      true,
      true,
      true,
      false,
      false,
    ]);
    expect(lookAt(session, 'spare')).toMatchObject({ text: '4', form: 'box reading' });
    expect(lookAt(session, 'spare', 'label').text).toBe('Spare');
    put(session, row, 'value', '=shim_count * 2');
    expect(lookAt(session, 'spare')).toMatchObject({ text: '8', form: 'plain' });
    expect(lookAt(session, 'spare', 'from').text).toBe('from shims');
  });
});

describe('what stands after a figure', () => {
  it('brings decimal points under one another', () => {
    const widths = ['900', '−10.0', '0.95'].map(
      (figure) => (figure + afterFigure(figure)).split('.')[1]?.length,
    );
    expect(widths).toEqual([2, 2, 2]);
  });

  it('is nothing after words and fractions', () => {
    expect(['solid', 'yes', '12 9⁄16', ''].map(afterFigure)).toEqual(['', '', '', '']);
  });
});
