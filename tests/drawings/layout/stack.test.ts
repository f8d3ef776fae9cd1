import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { stack } from '../../../src/drawings/layout/stack.ts';

describe('stack', () => {
  it('leaves things where they want to be when they do not touch', () => {
    const items = [
      { at: 20, size: 10, rank: 0 },
      { at: 60, size: 10, rank: 1 },
    ];
    expect(stack(items, 0, 100, 2)).toEqual([20, 60]);
  });

  it('pushes two that want the same place apart by equal shares', () => {
    const items = [
      { at: 50, size: 10, rank: 0 },
      { at: 50, size: 10, rank: 1 },
    ];
    expect(stack(items, 0, 100, 2)).toEqual([44, 56]);
  });

  it('gives up the last in rank when there is no room for all', () => {
    const items = [
      { at: 5, size: 10, rank: 2 },
      { at: 5, size: 10, rank: 0 },
      { at: 5, size: 10, rank: 1 },
    ];
    expect(stack(items, 0, 22, 2)[0]).toBeNull();
    expect(stack(items, 0, 22, 2).filter((it) => it !== null)).toHaveLength(2);
  });

  it('never overlaps, never leaves its ends, never swaps', () => {
    const item = fc.record({
      at: fc.double({ min: -50, max: 350, noNaN: true }),
      size: fc.double({ min: 1, max: 60, noNaN: true }),
      rank: fc.integer({ min: 0, max: 5 }),
    });
    fc.assert(
      fc.property(fc.array(item, { maxLength: 9 }), (items) => {
        const placed = stack(items, 0, 300, 3)
          .map((at, i) => ({ at, size: items[i]?.size ?? 0, wish: items[i]?.at ?? 0 }))
          .filter((it): it is { at: number; size: number; wish: number } => it.at !== null)
          .sort((a, b) => a.at - b.at);
        for (const [i, it] of placed.entries()) {
          expect(it.at - it.size / 2).toBeGreaterThanOrEqual(-1e-9);
          expect(it.at + it.size / 2).toBeLessThanOrEqual(300 + 1e-9);
          const next = placed[i + 1];
          if (next === undefined) continue;
          expect(it.at + it.size / 2 + 3).toBeLessThanOrEqual(next.at - next.size / 2 + 1e-9);
          expect(it.wish).toBeLessThanOrEqual(next.wish);
        }
      }),
    );
  });
});
