import { describe, expect, it } from 'vitest';
import type { Session } from '../../../src/session/session.ts';
import { dropText, keptText } from '../../../src/views/grid/kept-text.ts';
import { put } from '../../../src/views/grid/put.ts';
import { openSession, rowAndFacts } from './given.ts';

const rowOf = (session: Session, name: string) => rowAndFacts(session, name).row;

describe('a text put into the grid', () => {
  it('goes to the input, with its unit', () => {
    const session = openSession();
    expect(put(session, rowOf(session, 'transom_top'), 'value', '36 in')).toEqual({ ok: true });
    expect(session.value('transom_top')).toBeCloseTo(914.4, 9);
  });

  it('stays as typed when it is refused, and leaves when it is dropped', () => {
    const session = openSession();
    const row = rowOf(session, 'shim_count');
    expect(put(session, row, 'value', '2.5').ok).toBe(false);
    expect(keptText(session, row, 'value')).toMatchObject({ typed: '2.5' });
    expect(session.value('shim_count')).toBe(4);
    dropText(session, row, 'value');
    expect(keptText(session, row, 'value')).toBeUndefined();
  });

  it('sets how far a reading may be off, in the unit shown', () => {
    const session = openSession('in');
    const row = rowOf(session, 'transom_top');
    expect(put(session, row, 'offBy', '1/4').ok).toBe(true);
    expect(session.reading('transom_top')?.offBy).toBeCloseTo(6.35, 9);
    expect(session.value('transom_top')).toBe(900);
  });

  it.each(['-3', 'wide', '', '3 kn'])('refuses to be off by “%s” and says why', (typed) => {
    const session = openSession();
    const row = rowOf(session, 'transom_top');
    const done = put(session, row, 'offBy', typed);
    expect(done.ok).toBe(false);
    expect(keptText(session, row, 'offBy')?.why).toMatch(/\.$/);
    expect(session.reading('transom_top')?.offBy).toBe(10);
  });

  it('cannot overwrite what is worked out, nor a heading', () => {
    const session = openSession();
    const done = put(session, rowOf(session, 'standoff'), 'value', '5');
    expect(done).toEqual({
      ok: false,
      why: 'Transom to shaft axis is worked out from other cells and cannot be typed over.',
    });
    expect(put(session, { kind: 'section', title: 'The shaft', first: true }, 'label', 'x').ok).toBe(false);
  });

  it('is a formula only where one can stand', () => {
    const session = openSession();
    expect(put(session, rowOf(session, 'transom_top'), 'value', '=transom_bottom*20').ok).toBe(true);
    expect(session.value('transom_top')).toBe(800);
    expect(put(session, rowOf(session, 'transom_top'), 'offBy', '=transom_bottom').ok).toBe(false);
    expect(put(session, rowOf(session, 'transom_bottom'), 'value', '=HYPERLINK("x")').ok).toBe(false);
    expect(session.value('transom_bottom')).toBe(40);
  });
});

describe('own cells in the grid', () => {
  it('begin with a label, which gives them their name', () => {
    const session = openSession();
    expect(put(session, { kind: 'new' }, 'label', 'Spare height').ok).toBe(true);
    expect(session.plan.ownCells).toEqual([
      { name: 'spare_height', label: 'Spare height', unit: '–', value: null },
    ]);
    expect(put(session, { kind: 'new' }, 'label', 'Spare height').ok).toBe(true);
    expect(session.plan.ownCells[1]?.name).toBe('spare_height_2');
  });

  it('are not made from nothing, nor from what gives no name', () => {
    const session = openSession();
    expect(put(session, { kind: 'new' }, 'label', '  ').ok).toBe(true);
    expect(put(session, { kind: 'new' }, 'label', '???').ok).toBe(false);
    expect(session.plan.ownCells).toEqual([]);
    expect(keptText(session, { kind: 'new' }, 'label')?.typed).toBe('???');
  });

  it('take numbers, formulas, units and labels, and refuse the rest', () => {
    const session = openSession();
    put(session, { kind: 'new' }, 'label', 'Spare');
    const row = rowOf(session, 'spare');
    expect(put(session, row, 'unit', 'mm').ok).toBe(true);
    expect(put(session, row, 'value', '2 in').ok).toBe(true);
    expect(session.value('spare' as string)).toBeCloseTo(50.8, 9);
    expect(put(session, row, 'value', '=transom_top - transom_bottom').ok).toBe(true);
    expect(session.value('spare' as string)).toBe(860);
    expect(put(session, row, 'value', '=nothing').ok).toBe(false);
    expect(session.value('spare' as string)).toBe(860);
    expect(put(session, row, 'value', '7').ok).toBe(true);
    expect(session.plan.ownCells[0]).toEqual({ name: 'spare', label: 'Spare', unit: 'mm', value: 7 });
    expect(put(session, row, 'label', ' ').ok).toBe(false);
    expect(put(session, row, 'label', 'Spare room').ok).toBe(true);
    expect(session.plan.ownCells[0]?.label).toBe('Spare room');
  });
});
