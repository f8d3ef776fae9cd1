import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inverse, spliced, spliceOf } from '../../../src/app/keep/splice.ts';

describe('a splice', () => {
  it('turns one text into the other, and its inverse back', () => {
    const text = fc.string({ unit: fc.constantFrom('a', 'b', '\n'), maxLength: 12 });
    fc.assert(
      fc.property(text, text, (from, to) => {
        const splice = spliceOf(from, to);
        expect(spliced(from, splice)).toBe(to);
        expect(spliced(to, inverse(from, splice))).toBe(from);
      }),
    );
  });

  it('holds no more than what changed', () => {
    expect(spliceOf('rake: -10, top: 900', 'rake: -12, top: 900')).toEqual({ at: 8, drop: 1, put: '2' });
  });
});
