import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { niceTicks, tickText } from '../../../src/views/parts/ticks.ts';

describe('niceTicks', () => {
  it.each<[number, number, number, object, number[]]>([
    [0, 10, 5, {}, [0, 2, 4, 6, 8, 10]],
    [-3, 97, 5, {}, [-20, 0, 20, 40, 60, 80, 100]],
    [0, 1, 5, {}, [0, 0.2, 0.4, 0.6, 0.8, 1]],
    [1, 2, 6, { whole: true }, [1, 2]],
    [0, 254, 5, { of: 25.4 }, [0, 50.8, 101.6, 152.4, 203.2, 254]],
    [5, 5, 4, {}, [5]],
  ])('from %s to %s, about %s of them', (low, high, count, more, ticks) => {
    expect(niceTicks(low, high, count, more)).toEqual(ticks);
  });

  it('cover the range and are not many more than asked for', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1e5, max: 1e5, noNaN: true }),
        fc.double({ min: 1e-3, max: 1e5, noNaN: true }),
        fc.integer({ min: 2, max: 8 }),
        (low, span, count) => {
          const ticks = niceTicks(low, low + span, count);
          expect(ticks[0]).toBeLessThanOrEqual(low + span * 1e-6);
          expect(ticks.at(-1)).toBeGreaterThanOrEqual(low + span - span * 1e-6);
          expect(ticks.length).toBeLessThanOrEqual(count + 3);
        },
      ),
    );
  });

  it('are written with a true minus, in the unit shown', () => {
    expect(tickText(-50)).toBe('−50');
    expect(tickText(50.8, 25.4)).toBe('2');
    expect(tickText(0.30000000000000004)).toBe('0.3');
  });
});
