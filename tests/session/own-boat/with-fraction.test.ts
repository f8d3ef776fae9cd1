import { describe, expect, it } from 'vitest';
import { withFraction, withOtherSign } from '../../../src/session/own-boat/with-fraction.ts';
import { parseEntry } from '../../../src/units/parse-entry.ts';

describe('withFraction', () => {
  it.each([
    ['2', '2 3/8'],
    ['', '3/8'],
    ['  12 ', '12 3/8'],
    ['2 5/8', '2 3/8'],
    ['2-5/8', '2 3/8'],
    ['2⅝', '2 3/8'],
    ['2 5⁄8 in', '2 3/8'],
    ['2 5/8"', '2 3/8'],
    ['5/8', '3/8'],
    ['-5/8', '-3/8'],
    ['-', '-3/8'],
    ['−4', '-4 3/8'],
    ['2.5', '2 3/8'],
    ['2 1/', '2 3/8'],
  ])('puts the fraction into %j', (text, expected) => {
    expect(withFraction(text, 3, 8)).toBe(expected);
  });

  it('gives a text that is read as that length', () => {
    const ask = { name: 'Height', kind: 'length', unit: 'mm', bare: 'in' } as const;
    expect(parseEntry(withFraction('-4', 11, 16), ask)).toMatchObject({ ok: true, value: -119.0625 });
  });
});

describe('withOtherSign', () => {
  it.each([
    ['100', '-100'],
    ['-100', '100'],
    ['− 2 3/8', '2 3/8'],
    ['+5', '-5'],
    ['', '-'],
  ])('turns %j', (text, expected) => {
    expect(withOtherSign(text)).toBe(expected);
  });
});
