import { describe, expect, it } from 'vitest';
import { type Block, filledDown, filledFrom, filledWith } from '../../../src/views/grid/fill.ts';
import { putMany } from '../../../src/views/grid/put-many.ts';
import { isCellRow } from '../../../src/views/grid/rows.ts';
import { RowsState } from '../../../src/views/grid/rows-state.ts';
import { openSession } from './given.ts';

const VALUE = 1;

/** The workbook's rows, and the block from one cell's value to another's. */
function table() {
  const session = openSession();
  const state = new RowsState(session, undefined);
  const at = (name: string): number => state.rows.findIndex((row) => isCellRow(row) && row.name === name);
  const block = (first: string, last: string, cols: readonly [number, number] = [VALUE, VALUE]): Block => ({
    from: { row: at(first), col: cols[0] },
    to: { row: at(last), col: cols[1] },
  });
  const place = (name: string, col = VALUE) => state.place(at(name), col);
  const placeAt = state.place.bind(state);
  return { session, state, block, place, placeAt };
}

const names = (entries: ReturnType<typeof filledDown>) =>
  entries.map((it) => (isCellRow(it.row) ? it.row.name : ''));

describe('a selection that is filled', () => {
  it('takes what the uppermost cell holds, with its unit, over headings, as one step', () => {
    const { session, block, placeAt } = table();
    session.enter('port_foot_height', '21 in');
    const state = new RowsState(session, undefined);
    const entries = filledDown([block('port_foot_height', 'starboard_foot_height')], state.place.bind(state));
    expect(new Set(entries.map((it) => it.typed))).toEqual(new Set(['21 in']));
    expect(names(entries)).toContain('starboard_foot_height');
    expect(names(entries)).not.toContain('port_foot_height');
    expect(placeAt).toBeDefined();
    const before = session.plan;
    putMany(session, entries);
    expect(session.value('starboard_foot_height')).toBeCloseTo(533.4, 9);
    session.undo();
    expect(session.plan).toBe(before);
  });

  it('is never emptied: a cell that holds nothing, a result and a heading fill nothing', () => {
    const { session } = table();
    session.enter('transom_top', '');
    const state = new RowsState(session, undefined);
    const placeAt = state.place.bind(state);
    const at = (name: string): number => state.rows.findIndex((row) => isCellRow(row) && row.name === name);
    const block = {
      from: { row: at('transom_top'), col: VALUE },
      to: { row: at('transom_top') + 3, col: VALUE },
    };
    expect(filledDown([block], placeAt)).toEqual([]);
    expect(filledFrom([block], placeAt, state.place(at('transom_top'), VALUE))).toEqual([]);
    expect(filledFrom([block], placeAt, state.place(at('rudder_gap'), VALUE))).toEqual([]);
    expect(filledFrom([block], placeAt, state.place(0, VALUE))).toEqual([]);
    expect(filledWith([block], placeAt, 'value', '  ')).toEqual([]);
  });

  it('from the chosen cell keeps to its column and leaves the cell itself alone', () => {
    const { block, place, placeAt } = table();
    const all = block('transom_top', 'transom_bottom', [0, 4]);
    const entries = filledFrom([all], placeAt, place('transom_bottom'));
    expect(names(entries)).toContain('transom_top');
    expect(names(entries)).not.toContain('transom_bottom');
    expect(entries.every((it) => it.column === 'value')).toBe(true);
  });
});
