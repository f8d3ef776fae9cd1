import { describe, expect, it } from 'vitest';
import { cutWords } from '../../src/fitting/cut-long.ts';
import { inUnit } from '../../src/fitting/step.ts';

describe('a length to cut', () => {
  it('is never shorter than what is asked for', () => {
    expect(cutWords(205.1, 'mm')).toBe('206 mm');
    expect(cutWords(206, 'mm')).toBe('206 mm');
    // By hand: 205.1 mm is 129.2 sixteenths, so 130, which is 8 1/8 in.
    expect(cutWords(205.1, 'in')).toBe('8 1⁄8 in');
    expect(cutWords(205.1, 'both')).toBe('206 mm (8 1⁄8 in)');
    // 3/16 in is 4.7625 mm, a whole mark.
    expect(cutWords(4.7625, 'in')).toBe('3⁄16 in');
  });
});

describe('a length in the plan’s own unit', () => {
  it('is told in hundredths of an inch where a 16th would be more', () => {
    expect(inUnit({ units: 'in' }, 1)).toBe('0.04 in');
    expect(inUnit({ units: 'both' }, 1)).toBe('1 mm (0.04 in)');
    expect(inUnit({ units: 'mm' }, 1)).toBe('1 mm');
    expect(inUnit({ units: 'in' }, 12)).toBe('1⁄2 in');
  });
});
