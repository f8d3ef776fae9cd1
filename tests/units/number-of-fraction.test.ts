import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fraction } from '../../src/units/fraction.ts';
import { numberOfFraction } from '../../src/units/number-of-fraction.ts';
import { isNearestDouble } from './exact-double.ts';

describe('numberOfFraction', () => {
  it('gives plain values', () => {
    expect(numberOfFraction(fraction(3n, 8n))).toBe(0.375);
    expect(numberOfFraction(fraction(-1n, 3n))).toBe(-1 / 3);
    expect(Object.is(numberOfFraction(fraction(0n, 5n)), 0)).toBe(true);
  });

  it('breaks ties to even, as IEEE 754-2019 4.3.1 does', () => {
    expect(numberOfFraction(fraction(2n ** 53n + 1n, 1n))).toBe(2 ** 53);
    expect(numberOfFraction(fraction(2n ** 53n + 3n, 1n))).toBe(2 ** 53 + 4);
    expect(numberOfFraction(fraction((2n ** 53n + 1n) * 10n ** 40n + 1n, 10n ** 40n))).toBe(2 ** 53 + 2);
  });

  it('goes to infinity past the largest double and not before', () => {
    expect(numberOfFraction(fraction(BigInt(Number.MAX_VALUE), 1n))).toBe(Number.MAX_VALUE);
    expect(numberOfFraction(fraction(2n ** 1024n, 1n))).toBe(Number.POSITIVE_INFINITY);
    expect(numberOfFraction(fraction(-(10n ** 2000n), 7n))).toBe(Number.NEGATIVE_INFINITY);
  });

  it('is the nearest double to random ratios', () => {
    const size = fc.bigInt({ min: 1n, max: 10n ** 60n });
    fc.assert(
      fc.property(size, size, fc.integer({ min: -200, max: 200 }), (over, under, power) => {
        const [up, down] = power < 0 ? [1n, 10n ** BigInt(-power)] : [10n ** BigInt(power), 1n];
        const value = numberOfFraction(fraction(over * up, under * down));
        expect(isNearestDouble(value, over * up, under * down)).toBe(true);
      }),
      { numRuns: 2000 },
    );
  });
});
