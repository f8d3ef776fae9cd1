import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { suspiciousRows } from '../../../src/calc/survey/suspicious.ts';

/** Small steps as a tape gives them, the same every time. */
const WOBBLE = [0.8, -1.1, 0.3, 0.9, -0.6, -0.9, 0.7, 0.1];
const rows = (bad: number, by: number) =>
  WOBBLE.map((it, i) => [100 * i, 400 - 17 * i + it + (i === bad ? by : 0)]);

describe('rows that do not go with the rest', () => {
  it('names a row that is far off, wherever it stands', () => {
    for (let bad = 0; bad < WOBBLE.length; bad++) {
      expect(suspiciousRows(rows(bad, 25), 3).map((it) => it.at)).toEqual([bad]);
    }
  });

  it('names nothing among readings that only wobble', () => {
    expect(suspiciousRows(rows(0, 0), 0.2)).toEqual([]);
  });

  it('names nothing that a tape may be off by', () => {
    const exact = [0, 1, 2, 3, 4, 5].map((i) => [100 * i, 400 - 17 * i + (i === 2 ? 2.5 : 0)]);
    expect(suspiciousRows(exact, 3)).toEqual([]);
    expect(suspiciousRows(exact, 0.5).map((it) => it.at)).toEqual([2]);
  });

  it('names nothing with fewer than four rows, whatever they are', () => {
    const few = fc.array(fc.tuple(fc.double({ noNaN: true }), fc.double({ noNaN: true })), { maxLength: 3 });
    fc.assert(fc.property(few, (it) => suspiciousRows(it, 0).length === 0));
  });
});
