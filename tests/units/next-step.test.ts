import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { nextStep, type Step } from '../../src/units/next-step.ts';

const sixteenth: Step = { inch: [1, 16] };

describe('nextStep', () => {
  it.each<[number, Step, 1 | -1, number]>([
    [0.2, 0.1, 1, 0.3],
    [0.30000000000000004, 0.1, 1, 0.4],
    [0.30000000000000004, 0.1, -1, 0.2],
    [0.29999999999999993, 0.1, 1, 0.4],
    [0.7, 0.1, -1, 0.6],
    [250, 5, 1, 255],
    [252, 5, 1, 255],
    [252, 5, -1, 250],
    [-252, 5, 1, -250],
    [-252, 5, -1, -255],
    [5, 5, -1, 0],
    [-5, 5, 1, 0],
    [1025, 0.5, -1, 1024.5],
    [0, sixteenth, 1, 1.5875],
    [0, sixteenth, -1, -1.5875],
    [60.325, sixteenth, 1, 61.9125],
    [60.325, sixteenth, -1, 58.7375],
    [60, sixteenth, 1, 60.325],
    [60, sixteenth, -1, 58.7375],
    [25.4, { inch: [1, 4] }, 1, 31.75],
    [25.4, { inch: [1, 3] }, -1, (254 * 2) / 30],
    [0, { inch: [0.5, 1] }, 1, 12.7],
  ])('%s by %j, direction %s, is %s', (value, step, direction, next) => {
    expect(nextStep(value, step, direction)).toBe(next);
  });

  it('never answers minus zero', () => {
    expect(Object.is(nextStep(-0.1, 0.1, 1), 0)).toBe(true);
  });

  it('stays on the grid of decimals, however far it goes', () => {
    const start = fc.integer({ min: -3000, max: 3000 });
    fc.assert(
      fc.property(start, fc.constantFrom<(1 | -1)[]>(1, -1), (tenths, direction) => {
        let value = tenths / 10;
        for (let count = 1; count <= 50; count += 1) {
          value = nextStep(value, 0.1, direction);
          expect(value).toBe((tenths + direction * count) / 10 + 0);
        }
      }),
    );
  });

  it('stays on the grid of 64ths of an inch, and comes back', () => {
    fc.assert(
      fc.property(fc.integer({ min: -20000, max: 20000 }), (count) => {
        const value = (count * 127) / 320 + 0;
        const up = nextStep(value, { inch: [1, 64] }, 1);
        expect(up).toBe(((count + 1) * 127) / 320 + 0);
        expect(nextStep(up, { inch: [1, 64] }, -1)).toBe(value);
      }),
      { numRuns: 2000 },
    );
  });

  it('moves in its direction, by no more than a step and never by nothing', () => {
    const value = fc.double({ min: -5000, max: 5000, noNaN: true });
    const step = fc.constantFrom(0.1, 0.25, 0.5, 1, 2, 5, 10);
    fc.assert(
      fc.property(value, step, fc.constantFrom<(1 | -1)[]>(1, -1), (from, size, direction) => {
        const moved = (nextStep(from, size, direction) - from) * direction;
        expect(moved).toBeGreaterThan(0);
        expect(moved).toBeLessThanOrEqual(size * (1 + 1e-8) + 1e-12);
      }),
      { numRuns: 3000 },
    );
  });

  it('refuses a step that is none and a value that is no number', () => {
    expect(() => nextStep(1, 0, 1)).toThrow('a step is above 0');
    expect(() => nextStep(1, -0.5, 1)).toThrow('a step is above 0');
    expect(() => nextStep(1, { inch: [1, 0] }, 1)).toThrow(RangeError);
    expect(() => nextStep(Number.NaN, 1, 1)).toThrow('NaN');
  });
});
