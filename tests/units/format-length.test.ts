import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Ask } from '../../src/units/entry.ts';
import { formatLength, inchRoundingError, lengthPieces } from '../../src/units/format-length.ts';
import { parseEntry } from '../../src/units/parse-entry.ts';

const inches: Ask = { name: 'x', kind: 'length', unit: 'mm', bare: 'in' };
const read = (text: string, ask: Ask): number => {
  const entry = parseEntry(text, ask);
  if (!entry.ok || entry.empty || typeof entry.value !== 'number') throw new Error(JSON.stringify(entry));
  return entry.value;
};
const anyParts = fc.constantFrom<(16 | 32 | 64)[]>(16, 32, 64);

describe('formatLength', () => {
  it('writes millimetres, inches, or both', () => {
    expect(formatLength(319.0875, { unit: 'mm' })).toBe('319.1 mm');
    expect(formatLength(319.0875, { unit: 'in' })).toBe('12 9⁄16 in');
    expect(formatLength(319.0875, { unit: 'both' })).toBe('319.1 mm (12 9⁄16 in)');
    expect(formatLength(-60.325, { unit: 'both' })).toBe('−60.3 mm (−2 3⁄8 in)');
    expect(formatLength(60, { unit: 'mm' })).toBe('60 mm');
    expect(formatLength(0, { unit: 'in' })).toBe('0 in');
  });

  it('takes decimals for millimetres, and for inches when no fraction is asked', () => {
    expect(formatLength(319.0875, { unit: 'mm', decimals: 3 })).toBe('319.088 mm');
    expect(formatLength(319.0875, { unit: 'in', decimals: 3 })).toBe('12.563 in');
    expect(formatLength(319.0875, { unit: 'in', decimals: 3, fraction: 16 })).toBe('12 9⁄16 in');
    expect(formatLength(319.0875, { unit: 'both', decimals: 0, fraction: 64 })).toBe('319 mm (12 9⁄16 in)');
  });

  // Check value 13 of the project's list, by closed form: 10 mm = 0.393701 in.
  it('rounds 10 mm to 3/8 in and 25/64 in, with the error known', () => {
    expect(formatLength(10, { unit: 'in', fraction: 16 })).toBe('3⁄8 in');
    expect(inchRoundingError(10, { fraction: 16 })).toBe(-0.475);
    expect(formatLength(10, { unit: 'in', fraction: 64 })).toBe('25⁄64 in');
    expect(inchRoundingError(10, { fraction: 64 })).toBe(-0.078125);
  });

  // The same list; ASTM E29 leaves the rule for ties to be stated: half away from zero.
  it('sends 1/32 in, half-way between sixteenths, away from zero', () => {
    expect(formatLength(0.79375, { unit: 'in', fraction: 16 })).toBe('1⁄16 in');
    expect(formatLength(-0.79375, { unit: 'in', fraction: 16 })).toBe('−1⁄16 in');
    expect(inchRoundingError(0.79375, { fraction: 16 })).toBe(0.79375);
    expect(formatLength(0.79374, { unit: 'in', fraction: 16 })).toBe('0 in');
  });

  it('reduces 4/16 to 1/4 and carries 16/16 to 1 (the same list)', () => {
    expect(formatLength(6.35, { unit: 'in', fraction: 16 })).toBe('1⁄4 in');
    expect(formatLength(25.2, { unit: 'in', fraction: 16 })).toBe('1 in');
    expect(formatLength(304.7, { unit: 'in', fraction: 16 })).toBe('12 in');
    expect(formatLength(-25.2, { unit: 'in', fraction: 16 })).toBe('−1 in');
  });

  it('keeps figures and units apart', () => {
    expect(lengthPieces(319.0875, { unit: 'both' })).toEqual([
      { figure: '319.1', unit: 'mm' },
      { figure: '12 9⁄16', unit: 'in' },
    ]);
  });

  it('has no answer where there is no number, and never a minus zero', () => {
    expect(formatLength(Number.NaN, { unit: 'both' })).toBe('no answer');
    expect(formatLength(Number.NEGATIVE_INFINITY, { unit: 'in' })).toBe('no answer');
    expect(formatLength(-0, { unit: 'both' })).toBe('0 mm (0 in)');
    expect(formatLength(-0.01, { unit: 'in' })).toBe('0 in');
    expect(() => inchRoundingError(Number.NaN)).toThrow(RangeError);
  });

  it('leaves huge lengths in mm', () => {
    expect(formatLength(1e20, { unit: 'in' })).toBe('100000000000000000000 mm');
  });
});

describe('format, then parse', () => {
  it('every 64th of an inch comes back as the same double', () => {
    fc.assert(
      fc.property(fc.integer({ min: -100_000, max: 100_000 }), (count) => {
        const mm = (count * 127) / 320;
        const text = formatLength(mm, { unit: 'in', fraction: 64 });
        expect(read(text, inches)).toBe(mm + 0);
        expect(read(text.replace(' in', ''), inches)).toBe(mm + 0);
      }),
      { numRuns: 3000 },
    );
  });

  it('any length comes back off by the rounding error, at most half a part', () => {
    const mm = fc.double({ min: -5000, max: 5000, noNaN: true });
    fc.assert(
      fc.property(mm, anyParts, (value, fraction) => {
        const back = read(formatLength(value, { unit: 'in', fraction }), inches);
        const error = inchRoundingError(value, { fraction });
        expect(back - value).toBeCloseTo(error, 9);
        expect(Math.abs(error)).toBeLessThanOrEqual(12.7 / fraction);
        expect(formatLength(back, { unit: 'in', fraction })).toBe(
          formatLength(value, { unit: 'in', fraction }),
        );
      }),
      { numRuns: 3000 },
    );
  });

  it('millimetres come back within half of the last decimal', () => {
    const mm = fc.double({ min: -5000, max: 5000, noNaN: true });
    fc.assert(
      fc.property(mm, fc.integer({ min: 0, max: 6 }), (value, decimals) => {
        const back = read(formatLength(value, { unit: 'mm', decimals }), inches);
        expect(Math.abs(back - value)).toBeLessThanOrEqual(0.5 * 10 ** -decimals + 1e-12);
      }),
      { numRuns: 3000 },
    );
  });
});
