import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fractionOfDecimal, fractionOfNumber } from '../../src/units/fraction-of-decimal.ts';
import { numberOfFraction } from '../../src/units/number-of-fraction.ts';

describe('fractionOfDecimal', () => {
  it.each([
    ['25.4', 127n, 5n],
    ['-0.5', -1n, 2n],
    ['.5', 1n, 2n],
    ['4.', 4n, 1n],
    ['1e3', 1000n, 1n],
    ['1e-7', 1n, 10n ** 7n],
    ['1.5e+2', 150n, 1n],
    ['-0', 0n, 1n],
  ])('reads %s', (text, over, under) => {
    expect(fractionOfDecimal(text)).toEqual({ over, under });
  });

  it.each(['', '.', '-', 'e3', '1,5', '0x10', 'NaN', 'Infinity', ' 4', '1e'])('throws on "%s"', (text) => {
    expect(() => fractionOfDecimal(text)).toThrow(RangeError);
  });
});

describe('fractionOfNumber', () => {
  it('takes the shortest decimal, so 0.1 is a tenth', () => {
    expect(fractionOfNumber(0.1)).toEqual({ over: 1n, under: 10n });
    expect(fractionOfNumber(0.79375)).toEqual({ over: 127n, under: 160n });
  });

  it('comes back as the same double', () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (value) => {
        fc.pre(Math.abs(value) >= 1e-300);
        expect(numberOfFraction(fractionOfNumber(value))).toBe(value);
      }),
      { numRuns: 2000 },
    );
  });

  it('throws where there is no number', () => {
    expect(() => fractionOfNumber(Number.NaN)).toThrow('NaN');
    expect(() => fractionOfNumber(Number.POSITIVE_INFINITY)).toThrow('Infinity');
  });
});
