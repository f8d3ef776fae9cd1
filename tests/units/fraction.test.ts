import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  add,
  divide,
  floor,
  fraction,
  isWhole,
  multiply,
  negate,
  roundHalfAway,
  subtract,
} from '../../src/units/fraction.ts';

const whole = fc.bigInt({ min: -(10n ** 30n), max: 10n ** 30n });
const above0 = fc.bigInt({ min: 1n, max: 10n ** 30n });
const anyFraction = fc.tuple(whole, above0).map(([over, under]) => fraction(over, under));

describe('fraction', () => {
  it('reduces, and keeps the number under the line above 0', () => {
    expect(fraction(4n, 16n)).toEqual({ over: 1n, under: 4n });
    expect(fraction(3n, -6n)).toEqual({ over: -1n, under: 2n });
    expect(fraction(0n, -7n)).toEqual({ over: 0n, under: 1n });
  });

  it('refuses 0 under the line', () => {
    expect(() => fraction(3n, 0n)).toThrow('the number under the line is not 0');
    expect(() => divide(fraction(1n, 2n), fraction(0n, 1n))).toThrow(RangeError);
  });

  it('adds, subtracts, multiplies and divides exactly (cross-multiplied whole numbers)', () => {
    fc.assert(
      fc.property(whole, above0, whole, above0, (a, b, c, d) => {
        const [x, y] = [fraction(a, b), fraction(c, d)];
        const same = (got: { over: bigint; under: bigint }, over: bigint, under: bigint): void =>
          expect(got.over * under).toBe(over * got.under);
        same(add(x, y), a * d + c * b, b * d);
        same(subtract(x, y), a * d - c * b, b * d);
        same(multiply(x, y), a * c, b * d);
        if (c !== 0n) same(divide(x, y), a * d, b * c);
      }),
    );
  });

  it.each([
    [1n, 2n, 1n],
    [-1n, 2n, -1n],
    [3n, 2n, 2n],
    [-3n, 2n, -2n],
    [5n, 2n, 3n],
    [49n, 100n, 0n],
    [51n, 100n, 1n],
    [-49n, 100n, 0n],
    [7n, 1n, 7n],
  ])('rounds %s/%s to %s: half away from zero', (over, under, rounded) => {
    expect(roundHalfAway(fraction(over, under))).toBe(rounded);
  });

  it('rounds a value and its mirror image alike, never by more than a half', () => {
    fc.assert(
      fc.property(anyFraction, (a) => {
        const rounded = roundHalfAway(a);
        expect(roundHalfAway(negate(a))).toBe(-rounded);
        const off = subtract(a, fraction(rounded, 1n));
        expect(2n * (off.over < 0n ? -off.over : off.over)).toBeLessThanOrEqual(off.under);
      }),
    );
  });

  it('floors towards minus infinity', () => {
    fc.assert(
      fc.property(anyFraction, (a) => {
        const rest = subtract(a, fraction(floor(a), 1n));
        expect(rest.over).toBeGreaterThanOrEqual(0n);
        expect(rest.over).toBeLessThan(rest.under);
      }),
    );
  });

  it('knows whole numbers', () => {
    expect(isWhole(fraction(8n, 2n))).toBe(true);
    expect(isWhole(fraction(1n, 2n))).toBe(false);
  });
});
