import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatNumber, numberPiece } from '../../src/units/format-number.ts';
import { parseEntry } from '../../src/units/parse-entry.ts';

describe('formatNumber', () => {
  it.each([
    [44.7009, 'mm', '44.7 mm'],
    [1100, 'mm', '1100 mm'],
    [1100.0000000000002, 'mm', '1100 mm'],
    [44.02, 'mm', '44.0 mm'],
    [-63.114, 'mm', '−63.1 mm'],
    [18.66, 'deg', '18.7°'],
    [35, 'deg', '35.0°'],
    [8.75, 'kn', '8.75 kn'],
    [7, 'kn', '7.0 kn'],
    [7.5, 'kn', '7.5 kn'],
    [2794.4776, 'N', '2794 N'],
    [2794.5, 'N', '2795 N'],
    [844.0345, 'MPa', '844 MPa'],
    [205, 'MPa', '205 MPa'],
    [10, 'MPa', '10 MPa'],
    [4.3, 'MPa', '4.3 MPa'],
    [193000, 'MPa', '193000 MPa'],
    [30, 'kg', '30 kg'],
    [29.93709642, 'kg', '29.9 kg'],
    [1025, 'kg/m³', '1025 kg/m³'],
    [15000, 'mm²', '15000 mm²'],
    [0.2071, 'm²', '0.21 m²'],
    [90.44, 'N·m', '90.4 N·m'],
    [0.7853, '–', '0.79'],
    [1, '–', '1'],
    [10, '%', '10 %'],
    [2.5, '%', '2.5 %'],
    [12.5, 'turns', '12.50 turns'],
  ])('%s in %s reads %s', (value, unit, text) => {
    expect(formatNumber(value, unit)).toBe(text);
  });

  it('takes the decimals it is given', () => {
    expect(formatNumber(44.7009, 'mm', 0)).toBe('45 mm');
    expect(formatNumber(44.7009, 'mm', 4)).toBe('44.7009 mm');
    expect(formatNumber(3, '–', 2)).toBe('3.00');
  });

  it.each([
    [0.5, 0, '1'],
    [-0.5, 0, '−1'],
    [1.5, 0, '2'],
    [2.5, 0, '3'],
    [-2.5, 0, '−3'],
    [1.005, 2, '1.01'],
    [1.115, 2, '1.12'],
    [0.049, 1, '0.0'],
    [9.95, 1, '10.0'],
  ])(
    '%s to %s decimals is %s: half away from zero, on the decimal a person sees',
    (value, decimals, figure) => {
      expect(numberPiece(value, '–', decimals).figure).toBe(figure);
    },
  );

  it('never writes minus zero', () => {
    expect(formatNumber(-0, 'mm')).toBe('0 mm');
    expect(formatNumber(-0.04, 'deg')).toBe('0.0°');
    expect(formatNumber(-0.4, 'N')).toBe('0 N');
  });

  it('says that there is no answer where there is no number', () => {
    for (const value of [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]) {
      expect(formatNumber(value, 'mm')).toBe('no answer');
      expect(formatNumber(value, 'mm', 2)).toBe('no answer');
    }
  });

  it('writes huge values with a power of ten', () => {
    expect(formatNumber(1e300, 'N')).toBe('1e300 N');
    expect(formatNumber(-2.5e15, 'N')).toBe('−2500000000000000 N');
  });

  it('keeps figure and unit apart', () => {
    expect(numberPiece(18.66, 'deg')).toEqual({ figure: '18.7', unit: '°' });
    expect(numberPiece(0.7853, '–')).toEqual({ figure: '0.79', unit: '' });
    expect(numberPiece(-5, 'mm')).toEqual({ figure: '−5', unit: 'mm' });
  });
});

describe('format, then parse', () => {
  const anyUnit = fc.constantFrom('mm', 'deg', 'kn', 'N', 'N·m', 'MPa', 'kg', 'kg/m³', 'mm²', 'm²', '–', '%');
  const value = fc.double({ min: -1e12, max: 1e12, noNaN: true });

  it('comes back within half of the last decimal shown, and then stays', () => {
    fc.assert(
      fc.property(value, anyUnit, fc.option(fc.integer({ min: 0, max: 8 })), (number, unit, decimals) => {
        const text = formatNumber(number, unit, decimals ?? undefined);
        const entry = parseEntry(text, { name: 'x', kind: 'number', unit, bare: 'mm' });
        if (!entry.ok || entry.empty || typeof entry.value !== 'number') throw new Error(text);
        const shown = numberPiece(number, unit, decimals ?? undefined).figure.split('.')[1]?.length ?? 0;
        // Doubles near 1e12 lie about 1e-4 apart; the bound allows one such spacing.
        const half = 0.5 * 10 ** -shown;
        expect(Math.abs(entry.value - number)).toBeLessThanOrEqual(half + Math.abs(number) * 2 ** -51);
        expect(formatNumber(entry.value, unit, shown)).toBe(text);
        expect(text).not.toMatch(/-|−0(\.0*)?( |$|°)/);
      }),
      { numRuns: 5000 },
    );
  });
});
