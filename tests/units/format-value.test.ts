import { describe, expect, it } from 'vitest';
import { formatFlag, formatValue, valuePieces } from '../../src/units/format-value.ts';

describe('formatValue', () => {
  it('writes TRUE and FALSE as yes and no', () => {
    expect(formatFlag(true)).toBe('yes');
    expect(formatFlag(false)).toBe('no');
    expect(formatValue(true, '–', { unit: 'mm' })).toBe('yes');
    expect(valuePieces(false, '–', { unit: 'in' })).toEqual([{ figure: 'no', unit: '' }]);
  });

  it('lets words stand and says when there is no answer', () => {
    expect(formatValue('cored', '–', { unit: 'mm' })).toBe('cored');
    expect(formatValue(null, 'mm', { unit: 'both' })).toBe('no answer');
  });

  it('shows lengths in the unit asked for, and nothing else in it', () => {
    expect(formatValue(60.325, 'mm', { unit: 'in', fraction: 32 })).toBe('2 3⁄8 in');
    expect(formatValue(60.325, 'mm', { unit: 'both', decimals: 2 })).toBe('60.33 mm (2 3⁄8 in)');
    expect(formatValue(60.325, 'deg', { unit: 'in', decimals: 3 })).toBe('60.3°');
    expect(formatValue(15000, 'mm²', { unit: 'in' })).toBe('15000 mm²');
  });
});
