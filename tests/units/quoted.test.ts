import { describe, expect, it } from 'vitest';
import { quoted } from '../../src/units/quoted.ts';

describe('quoted', () => {
  it('leaves readable text alone, with single spaces', () => {
    expect(quoted('2  3/8\u00a0in')).toBe('2 3/8 in');
    expect(quoted('⅜″ 12° ü')).toBe('⅜″ 12° ü');
  });

  it('shows what cannot be seen by its number', () => {
    expect(quoted('a\u202eb\u0000\u2028')).toBe('a[U+202E]b[U+0000][U+2028]');
    expect(quoted('\ud800')).toBe('[U+D800]');
  });

  it('cuts after forty signs, never through one', () => {
    expect(quoted('x'.repeat(40))).toBe('x'.repeat(40));
    expect(quoted('𝟚'.repeat(41))).toBe(`${'𝟚'.repeat(40)}...`);
  });
});
