import { describe, expect, it } from 'vitest';
import type { Session } from '../../../src/session/session.ts';
import { type Entry, putMany } from '../../../src/views/grid/put-many.ts';
import { openSession, rowAndFacts } from './given.ts';

const entry = (session: Session, name: string, typed: string): Entry => ({
  row: rowAndFacts(session, name).row,
  column: 'value',
  typed,
});

describe('texts put into several cells', () => {
  it('are one step of undo', () => {
    const session = openSession();
    const outcome = putMany(session, [
      entry(session, 'transom_top', '910'),
      entry(session, 'transom_bottom', '41'),
      entry(session, 'shim_count', '5'),
    ]);
    expect(outcome).toEqual({ taken: 3, refused: 0 });
    expect(session.undoes).toBe('3 values');
    session.undo();
    expect(['transom_top', 'transom_bottom', 'shim_count'].map((name) => session.value(name))).toEqual([
      900, 40, 4,
    ]);
    expect(session.undoes).toBeUndefined();
  });

  it('take what can be taken and keep the rest as typed, each with its reason', () => {
    const session = openSession();
    const outcome = putMany(session, [
      entry(session, 'transom_top', '910'),
      entry(session, 'shim_count', '2.5'),
      entry(session, 'transom_bottom', '2 3/0'),
    ]);
    expect(outcome).toEqual({ taken: 1, refused: 2 });
    expect(session.value('transom_top')).toBe(910);
    expect(session.draft('shim_count')?.typed).toBe('2.5');
    expect(session.draft('transom_bottom')?.why).toContain('cannot be 0');
  });

  it('may stand together though not in the order given', () => {
    const session = openSession();
    const outcome = putMany(session, [
      entry(session, 'transom_bottom', '950'),
      entry(session, 'transom_top', '1500'),
    ]);
    expect(outcome).toEqual({ taken: 2, refused: 0 });
    expect([session.value('transom_bottom'), session.value('transom_top')]).toEqual([950, 1500]);
  });

  it('refuse what cannot stand together, naming both', () => {
    const session = openSession();
    const outcome = putMany(session, [
      entry(session, 'transom_bottom', '1600'),
      entry(session, 'transom_top', '1500'),
    ]);
    expect(outcome).toEqual({ taken: 1, refused: 1 });
    expect(session.draft('transom_bottom')?.why).toMatch(/transom_bottom.*transom_top/);
  });

  it('do not move a locked choice', () => {
    const session = openSession();
    session.edit('Lock', (plan) => ({ ok: true, plan: { ...plan, locked: new Set(['shim_count']) } }));
    const outcome = putMany(session, [
      entry(session, 'shim_count', '5'),
      entry(session, 'transom_top', '910'),
    ]);
    expect(outcome).toEqual({ taken: 1, refused: 1 });
    expect(session.value('shim_count')).toBe(4);
  });

  it('reach the other columns too', () => {
    const session = openSession();
    const { row } = rowAndFacts(session, 'transom_top');
    const outcome = putMany(session, [
      { row, column: 'value', typed: '905' },
      { row, column: 'offBy', typed: '3' },
    ]);
    expect(outcome).toEqual({ taken: 2, refused: 0 });
    expect(session.reading('transom_top')).toMatchObject({ value: 905, offBy: 3 });
  });

  it('are one step also where they are no values', () => {
    const session = openSession();
    const names = ['transom_top', 'transom_bottom', 'transom_thickness'];
    const before = session.plan;
    putMany(
      session,
      names.map((name) => ({ row: rowAndFacts(session, name).row, column: 'offBy', typed: '4' })),
    );
    expect(names.map((name) => session.reading(name)?.offBy)).toEqual([4, 4, 4]);
    session.undo();
    expect(session.plan).toBe(before);
    expect(session.undoes).toBeUndefined();
  });

  it('are a plain edit when there is one', () => {
    const session = openSession();
    expect(putMany(session, [entry(session, 'transom_top', '910')])).toEqual({ taken: 1, refused: 0 });
    expect(session.undoes).toBe('Height of the transom’s upper edge');
    expect(putMany(session, [entry(session, 'transom_top', 'x')])).toEqual({ taken: 0, refused: 1 });
  });
});
