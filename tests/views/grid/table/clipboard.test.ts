import { describe, expect, it } from 'vitest';
import type { Column } from '../../../../src/views/grid/columns.ts';
import { clipText, fillClip, pastedAt } from '../../../../src/views/grid/table/clipboard.ts';
import { openSession, rowAndFacts } from '../given.ts';

const range = (startRow: number, startCol: number, endRow = startRow, endCol = startCol) => ({
  startRow,
  startCol,
  endRow,
  endCol,
});

describe('what the grid copies', () => {
  const session = openSession();
  const clip = (name: string, column: Column): string =>
    clipText({ ...rowAndFacts(session, name), column }, session.plan);

  it('is an input as typed, and a result as shown, with a minus that other programs read', () => {
    session.enter('transom_rake', '-10.5');
    expect(clip('transom_rake', 'value')).toBe('-10.5');
    expect(clip('vane_rudder_head', 'value')).toBe('-50');
    expect(clip('transom_top', 'value')).toBe('900 mm');
    expect(clip('transom_top', 'from')).toBe('stand-in');
  });

  it('fills the block in place', () => {
    const data = [
      ['', ''],
      ['', ''],
    ];
    fillClip(data, [range(3, 1, 4, 2)], (at, columnNumber) => `${at}/${columnNumber}`);
    expect(data).toEqual([
      ['3/1', '3/2'],
      ['4/1', '4/2'],
    ]);
  });
});

describe('where a paste goes', () => {
  it('is every chosen cell for one text', () => {
    expect(pastedAt([['7']], [range(2, 1, 4, 1)])).toEqual([
      { at: 2, columnNumber: 1, typed: '7' },
      { at: 3, columnNumber: 1, typed: '7' },
      { at: 4, columnNumber: 1, typed: '7' },
    ]);
  });

  it('is from the first chosen cell on for a block', () => {
    expect(
      pastedAt(
        [
          ['a', null],
          ['c', 'd'],
        ],
        [range(2, 1, 9, 1)],
      ),
    ).toEqual([
      { at: 2, columnNumber: 1, typed: 'a' },
      { at: 2, columnNumber: 2, typed: '' },
      { at: 3, columnNumber: 1, typed: 'c' },
      { at: 3, columnNumber: 2, typed: 'd' },
    ]);
  });

  it('is nowhere while nothing is chosen', () => {
    expect(pastedAt([['7']], [])).toEqual([]);
  });
});
