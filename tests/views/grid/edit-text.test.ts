import { describe, expect, it } from 'vitest';
import { setOwnCell, setUnits } from '../../../src/plan/edit.ts';
import { copyText, editText } from '../../../src/views/grid/edit-text.ts';
import { put } from '../../../src/views/grid/put.ts';
import { openSession, rowAndFacts } from './given.ts';

const textOf = (session: ReturnType<typeof openSession>, name: string): string => {
  const { row, facts } = rowAndFacts(session, name);
  return editText(row, 'value', facts);
};

describe('the text an editor opens on', () => {
  it('is what was typed', () => {
    const session = openSession();
    session.enter('transom_top', '2 3/8 in');
    expect(textOf(session, 'transom_top')).toBe('2 3/8 in');
  });

  it('gains its unit when a bare number would mean another one', () => {
    const session = openSession('mm');
    session.enter('transom_top', '905');
    expect(textOf(session, 'transom_top')).toBe('905');
    session.edit('Units', (plan) => setUnits(plan, 'in'));
    expect(textOf(session, 'transom_top')).toBe('905 mm');
    session.enter('transom_top', '36');
    expect(textOf(session, 'transom_top')).toBe('36');
    session.edit('Units', (plan) => setUnits(plan, 'both'));
    expect(textOf(session, 'transom_top')).toBe('36 in');
  });

  it('gives the same value back when it is put in unchanged, in any units', () => {
    for (const units of ['mm', 'in', 'both'] as const) {
      const session = openSession(units);
      for (const name of [
        'transom_top',
        'transom_rake',
        'plate_area',
        'core_removed',
        'transom_build',
        'shim_count',
      ]) {
        const before = session.value(name);
        expect(session.enter(name, textOf(session, name)), name).toEqual({ ok: true });
        expect(session.value(name), name).toBe(before);
      }
    }
  });

  it('is the formula of an input that follows others', () => {
    const session = openSession();
    session.enter('transom_top', '=transom_bottom * 20');
    expect(textOf(session, 'transom_top')).toBe('=transom_bottom * 20');
  });

  it('is the refused text while there is one', () => {
    const session = openSession();
    session.enter('transom_top', '2 3/0');
    expect(textOf(session, 'transom_top')).toBe('2 3/0');
    const { row } = rowAndFacts(session, 'tube_od');
    put(session, row, 'offBy', 'wide');
    expect(editText(row, 'offBy', rowAndFacts(session, 'tube_od').facts)).toBe('wide');
  });

  it('is an own cell’s label, unit, number or formula', () => {
    const session = openSession('in');
    session.edit('New', (plan) => setOwnCell(plan, { name: 'spare', label: 'Spare', unit: 'mm', value: 4 }));
    const { row, facts } = rowAndFacts(session, 'spare');
    expect(editText(row, 'label', facts)).toBe('Spare');
    expect(editText(row, 'unit', facts)).toBe('mm');
    expect(editText(row, 'value', facts)).toBe('4 mm');
  });
});

describe('the text for the clipboard', () => {
  it('never gives a length without its unit', () => {
    const session = openSession();
    session.enter('transom_top', '905');
    const { row, facts } = rowAndFacts(session, 'transom_top');
    expect(copyText(row, 'value', facts)).toBe('905 mm');
    session.enter('transom_top', '2 3/8"');
    expect(copyText(row, 'value', rowAndFacts(session, 'transom_top').facts)).toBe('2 3/8"');
  });

  it('gives what is in use rather than what was refused', () => {
    const session = openSession();
    session.enter('transom_top', 'foo');
    const { row, facts } = rowAndFacts(session, 'transom_top');
    expect(copyText(row, 'value', facts)).toBe('900 mm');
  });
});
