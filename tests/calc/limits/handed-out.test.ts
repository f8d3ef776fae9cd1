import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { handedOut } from '../../../src/calc/limits/handed-out.ts';

describe('a number as it is handed out', () => {
  // ECMA-262 Number.prototype.toPrecision rounds to so many significant digits in decimal, by another road.
  const precise = (value: number): number => Number(value.toPrecision(15));

  /** One in the last of fifteen digits. */
  const last = (value: number): number => 10 ** (Math.floor(Math.log10(Math.abs(value))) - 14);

  it.each([
    1.000000000000001,
    1.00000000000001,
    -1.000000000000001,
    -2.345678901234567,
    123456.7890123451,
    0.1 + 0.2,
    1,
    -1,
    7.000000000000008,
    1.5e200,
    -3.3e-200,
    2 ** 57 + 2 ** 5,
    -(2 ** 57) - 2 ** 5,
    1 / 3e7,
    -1 / 7e5,
    99_999_999_999_999,
  ])('%s has fifteen digits', (value) => {
    expect(Math.abs(handedOut(value) - precise(value))).toBeLessThanOrEqual(0.1 * last(value));
  });

  it('keeps whole numbers and loses the digit in which the order of sums shows', () => {
    expect(handedOut(0.1 + 0.2)).toBe(0.3);
    expect(handedOut(1.000000000000001)).toBe(1);
    expect(handedOut(-1.000000000000001)).toBe(-1);
    expect(handedOut(1.00000000000001)).toBe(1.00000000000001);
    expect(handedOut(99_999_999_999_999)).toBe(99_999_999_999_999);
    expect(handedOut(-12)).toBe(-12);
    expect(Object.is(handedOut(0), 0)).toBe(true);
  });

  it('leaves the least and greatest numbers as they are', () => {
    for (const value of [Number.MIN_VALUE, -Number.MIN_VALUE, Number.MAX_VALUE, -Number.MAX_VALUE]) {
      expect(handedOut(value)).toBe(value);
    }
  });

  it('agrees with rounding in decimal on any size', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 10, noNaN: true }),
        fc.integer({ min: -12, max: 20 }),
        fc.boolean(),
        (digits, power, minus) => {
          const value = (minus ? -1 : 1) * digits * 10 ** power;
          // Half-way, the last digit may go either way.
          expect(Math.abs(handedOut(value) - value)).toBeLessThanOrEqual(0.9 * last(value));
          const out = handedOut(value);
          expect(Math.abs(precise(out) - out)).toBeLessThanOrEqual(5e-16 * Math.abs(out));
        },
      ),
    );
  });
});
