import { describe, expect, it } from 'vitest';
import { belowHeads, moveOver } from '../../../src/views/grid/moves.ts';
import type { GridRow } from '../../../src/views/grid/rows.ts';

const head: GridRow = { kind: 'section', title: 'x', first: false };
const cell = (nth: number): GridRow => ({ kind: 'own', name: `c${nth}`, nth });
//                          0     1     2        3        4     5        6
const rows: GridRow[] = [head, head, cell(0), cell(1), head, cell(2), { kind: 'new' }];

describe('moves over the rows', () => {
  it('pass headings in both directions', () => {
    expect(moveOver(rows, 3, 1)).toBe(2);
    expect(moveOver(rows, 5, -1)).toBe(-2);
  });

  it('stay at the first and the last row that can be chosen', () => {
    expect(moveOver(rows, 2, -1)).toBe(0);
    expect(moveOver(rows, 6, 1)).toBe(0);
    expect(moveOver(rows, 5, -20)).toBe(-3);
    expect(moveOver(rows, 2, 20)).toBe(4);
  });

  it('do not move without a step', () => {
    expect(moveOver(rows, 3, 0)).toBe(0);
  });

  it('find the first row below headings', () => {
    expect(belowHeads(rows, 0)).toBe(2);
    expect(belowHeads(rows, 3)).toBe(3);
    expect(belowHeads([head], 0)).toBe(0);
  });
});
