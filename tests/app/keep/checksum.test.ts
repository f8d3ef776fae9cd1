import fc from 'fast-check';
import { expect, it } from 'vitest';
import { checksum } from '../../../src/app/keep/checksum.ts';

it('gives the known check value', () => {
  // CRC-32 of the nine digits, as catalogued for the polynomial of ITU-T V.42; from memory.
  expect(checksum('123456789')).toBe(0xcbf43926);
  expect(checksum('')).toBe(0);
});

it('changes with any one character', () => {
  fc.assert(
    fc.property(fc.string({ minLength: 1, maxLength: 50 }), fc.nat(), (text, pick) => {
      const at = pick % text.length;
      const other = String.fromCharCode(text.charCodeAt(at) ^ 1);
      const changed = text.slice(0, at) + other + text.slice(at + 1);
      expect(checksum(changed)).not.toBe(checksum(text));
    }),
  );
});
