import { describe, expect, it } from 'vitest';
import { listed, numberWord } from '../../src/studies/words.ts';

describe('words', () => {
  it.each<[string[], string]>([
    [[], ''],
    [['a'], 'a'],
    [['a', 'b'], 'a and b'],
    [['a', 'b', 'c'], 'a, b and c'],
  ])('lists %j', (parts, text) => {
    expect(listed(parts)).toBe(text);
  });

  it('writes counts out up to twelve', () => {
    expect([0, 1, 4, 12, 13].map(numberWord)).toEqual(['no', 'one', 'four', 'twelve', '13']);
  });
});
