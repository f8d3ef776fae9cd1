import { describe, expect, it } from 'vitest';
import type { LimitSample } from '../../../src/studies/evaluator.ts';
import type { Swept } from '../../../src/studies/sweep.ts';
import { edgesOf } from '../../../src/views/charts/edges.ts';

const limit = (over: Partial<LimitSample>): LimitSample => ({
  name: 'gap',
  state: 'inside',
  room: 1,
  ratio: 1,
  value: 1,
  low: null,
  high: null,
  ...over,
});

const swept = (rows: readonly (readonly LimitSample[])[]): Swept => ({
  ask: {
    input: 'x',
    low: 0,
    high: rows.length - 1,
    present: null,
    whole: false,
    points: rows.length,
    results: [],
  },
  points: rows.map((limits, x) => ({ x, values: [], limits })),
  turnings: [],
});

const GAP = new Set(['gap']);

describe('edgesOf', () => {
  it('draws a bound that stays as one straight edge', () => {
    const rows = Array.from({ length: 5 }, () => [limit({ low: 50 })]);
    expect(edgesOf(swept(rows), GAP)).toEqual([
      {
        limit: 'gap',
        forbids: 'below',
        spots: [
          { x: 0, y: 50 },
          { x: 4, y: 50 },
        ],
      },
    ]);
  });

  it('follows a bound that moves with what is swept', () => {
    const rows = [10, 20, 20, 20, 30].map((high) => [limit({ high })]);
    expect(edgesOf(swept(rows), GAP)[0]).toMatchObject({
      forbids: 'above',
      spots: [
        { x: 0, y: 10 },
        { x: 1, y: 20 },
        { x: 3, y: 20 },
        { x: 4, y: 30 },
      ],
    });
  });

  it('breaks where the limit does not apply, and leaves out other limits', () => {
    const other = limit({ name: 'other', low: 1 });
    const rows = [true, true, false, true, true].map((applies) => [
      other,
      limit(applies ? { low: 5 } : { state: 'does not apply', low: 5 }),
    ]);
    expect(edgesOf(swept(rows), GAP).map((it) => it.spots.map((spot) => spot.x))).toEqual([
      [0, 1],
      [3, 4],
    ]);
  });

  it('draws both bounds of a limit', () => {
    const rows = [1, 2].map(() => [limit({ low: 1, high: 9 })]);
    expect(edgesOf(swept(rows), GAP).map((it) => it.forbids)).toEqual(['below', 'above']);
  });
});
