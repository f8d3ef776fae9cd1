import { describe, expect, it } from 'vitest';
import { chanceWords, holdsFrom, intervalWords } from '../../src/studies/chance-words.ts';

describe('a chance in words', () => {
  it.each([
    [0, 'none'],
    [0.967, '96.7 %'],
    [0.5, '50 %'],
    [0.0332, '3.3 %'],
    [0.0042, '0.42 %'],
    [0.000203, '1 in 4,900'],
    [3.6e-6, '1 in 280,000'],
    [1e-30, 'less than 1 in 1,000,000,000'],
    [0.99995, 'more than 99.99 %'],
    [1, '100 %'],
  ])('%f is %s', (chance, words) => {
    expect(chanceWords(chance)).toBe(words);
  });
});

describe('an interval in words', () => {
  it('is never a bare number', () => {
    expect(intervalWords({ value: 0.033, low: 0.032, high: 0.034 })).toBe('3.3 % (3.2 % to 3.4 %)');
    expect(intervalWords({ value: 0, low: 0, high: 3.7e-5 })).toBe('less than 1 in 27,000');
    expect(intervalWords({ value: 0.5, low: 0.4999, high: 0.5001 })).toBe('about 50 %');
    expect(intervalWords({ value: 1e-5, low: 0, high: 1e-4 })).toBe('1 in 100,000 (at most 1 in 10,000)');
  });

  it('turns round from failing to holding', () => {
    expect(intervalWords(holdsFrom({ value: 0.033, low: 0.032, high: 0.034 }))).toBe(
      '96.7 % (96.6 % to 96.8 %)',
    );
  });
});
