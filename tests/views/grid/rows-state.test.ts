import { describe, expect, it } from 'vitest';
import { setUnits } from '../../../src/plan/edit.ts';
import { put } from '../../../src/views/grid/put.ts';
import { isCellRow } from '../../../src/views/grid/rows.ts';
import { RowsState } from '../../../src/views/grid/rows-state.ts';
import { openSession, rowAndFacts } from './given.ts';

const namesMoved = (state: RowsState): string[] => {
  const moved = state.refresh();
  if (moved.rows) return ['rows'];
  return moved.at.map((at) => {
    const row = state.rows[at];
    return isCellRow(row) ? row.name : 'new';
  });
};

describe('what an edit of the plan moves in the grid', () => {
  it('is the edited input and what follows from it, and no other row', () => {
    const session = openSession();
    const state = new RowsState(session, undefined);
    session.choose('saw_kerf', 3);
    const moved = namesMoved(state);
    expect(moved).toContain('saw_kerf');
    expect(moved).toContain('strut_offcut');
    expect(moved).not.toContain('standoff');
    expect(moved.length).toBeLessThan(12);
  });

  it('is nothing when nothing was edited', () => {
    const session = openSession();
    const state = new RowsState(session, undefined);
    expect(namesMoved(state)).toEqual([]);
    session.dropDraft('saw_kerf');
    expect(namesMoved(state)).toEqual([]);
  });

  it('takes the ticks of the edit before away', () => {
    const session = openSession();
    const state = new RowsState(session, undefined);
    session.choose('saw_kerf', 3);
    state.refresh();
    session.choose('gear_mass', 31);
    expect(namesMoved(state)).toContain('strut_offcut');
  });

  it('is a refused text alone', () => {
    const session = openSession();
    const state = new RowsState(session, undefined);
    session.enter('saw_kerf', 'x');
    expect(namesMoved(state)).toEqual(['saw_kerf']);
    put(session, rowAndFacts(session, 'tube_od').row, 'offBy', 'x');
    expect(namesMoved(state)).toEqual(['tube_od']);
  });

  it('is every row when the units change, and the rows themselves with an own cell more', () => {
    const session = openSession();
    const state = new RowsState(session, undefined);
    session.edit('Units', (plan) => setUnits(plan, 'in'));
    expect(namesMoved(state).length).toBe(
      state.rows.filter((row) => isCellRow(row) || row.kind === 'new').length,
    );
    put(session, { kind: 'new' }, 'label', 'Spare');
    expect(namesMoved(state)).toEqual(['rows']);
    expect(state.rows.some((row) => row.kind === 'own' && row.name === 'spare')).toBe(true);
  });

  it('gives each place its row, column and facts', () => {
    const state = new RowsState(openSession(), 'Mount');
    expect(state.place(1, 1)).toMatchObject({ row: { name: 'upper_bracket_height' }, column: 'value' });
    expect(state.place(1, 9)).toBeUndefined();
    expect(state.place(999, 1)).toBeUndefined();
  });
});
