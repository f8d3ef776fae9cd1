import { describe, expect, it } from 'vitest';
import { typedText } from '../../src/session/typed-text.ts';

const read = (typed: string, unit: string) => ({ value: 1, origin: 'reading' as const, typed, unit });

describe('the text a field gives back', () => {
  it('carries its unit only where a bare number would now mean another one', () => {
    expect(typedText(read('2 3/8', 'in'), 'mm', 'in')).toBe('2 3/8');
    expect(typedText(read('2 3/8', 'in'), 'mm', 'mm')).toBe('2 3/8 in');
    expect(typedText(read('60', 'mm'), 'mm', 'in')).toBe('60 mm');
  });

  it('adds none to feet and inches, which say themselves what they are', () => {
    expect(typedText(read("5' 2 3/8", 'in'), 'mm', 'mm')).toBe("5' 2 3/8");
    expect(typedText(read('60 mm', 'mm'), 'mm', 'in')).toBe('60 mm');
  });

  it('is the formula of an input that follows others, and nothing where nothing was typed', () => {
    expect(typedText({ value: 1, origin: 'reading', formula: '=shim_count' }, 'mm', 'mm')).toBe(
      '=shim_count',
    );
    expect(typedText({ value: 1, origin: 'stand-in' }, 'mm', 'mm')).toBeUndefined();
  });
});
