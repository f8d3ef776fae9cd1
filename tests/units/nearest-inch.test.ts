import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fraction } from '../../src/units/fraction.ts';
import { inchFigure, nearestInch } from '../../src/units/nearest-inch.ts';

const parts = fc.constantFrom<(16 | 32 | 64)[]>(16, 32, 64);

describe('nearestInch', () => {
  it('reduces and carries', () => {
    expect(nearestInch(fraction(4n, 16n), 16)).toEqual({ over: 1n, under: 4n });
    expect(nearestInch(fraction(127n, 128n), 16)).toEqual({ over: 1n, under: 1n });
    expect(nearestInch(fraction(-127n, 128n), 64)).toEqual({ over: -1n, under: 1n });
  });

  it.each([
    [1n, 32n, 1n, 16n],
    [-1n, 32n, -1n, 16n],
    [3n, 32n, 1n, 8n],
    [5n, 32n, 3n, 16n],
  ])('%s/%s, half-way between sixteenths, goes away from zero', (over, under, a, b) => {
    expect(nearestInch(fraction(over, under), 16)).toEqual({ over: a, under: b });
  });

  it('is a whole number of parts, at most half a part away', () => {
    const whole = fc.bigInt({ min: -(10n ** 12n), max: 10n ** 12n });
    fc.assert(
      fc.property(whole, fc.bigInt({ min: 1n, max: 10n ** 6n }), parts, (over, under, count) => {
        const near = nearestInch(fraction(over, under), count);
        expect(BigInt(count) % near.under).toBe(0n);
        const off = near.over * under - over * near.under;
        expect((off < 0n ? -off : off) * 2n * BigInt(count)).toBeLessThanOrEqual(near.under * under);
      }),
    );
  });
});

describe('inchFigure', () => {
  it.each([
    [201n, 16n, '12 9⁄16'],
    [9n, 16n, '9⁄16'],
    [-19n, 8n, '−2 3⁄8'],
    [-3n, 8n, '−3⁄8'],
    [12n, 1n, '12'],
    [-12n, 1n, '−12'],
    [0n, 1n, '0'],
  ])('%s/%s is written %s', (over, under, figure) => {
    expect(inchFigure(fraction(over, under))).toBe(figure);
  });
});
