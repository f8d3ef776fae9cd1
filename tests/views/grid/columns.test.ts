import { describe, expect, it } from 'vitest';
import { COLUMNS, columnAt, HEADINGS, SPOKEN, widthOf } from '../../../src/views/grid/columns.ts';

const whole = (room: number): number => COLUMNS.reduce((sum, column) => sum + widthOf(column, room), 0);

describe('columns of the grid', () => {
  it('fill the room there is, the names taking the rest', () => {
    expect(whole(730)).toBe(730);
    expect(whole(640)).toBe(640);
    expect(widthOf('label', 730)).toBeGreaterThan(widthOf('value', 730));
  });

  it('keep the names readable where there is too little room', () => {
    expect(widthOf('label', 300)).toBe(168);
  });

  it('are found by their place, and have words to be read out where a sign heads them', () => {
    expect(columnAt(1)).toBe('value');
    expect(columnAt(5)).toBeUndefined();
    expect(HEADINGS.offBy).toBe('±');
    expect(SPOKEN.offBy).toBe('Off by');
  });
});
