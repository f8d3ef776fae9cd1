import { describe, expect, it } from 'vitest';
import { signedSlope } from '../../../src/session/own-boat/with-sign.ts';

describe('signedSlope', () => {
  it.each([
    ['10', 'aft', '10'],
    ['+10', 'aft', '10'],
    ['10', 'forward', '-10'],
    ['-10', 'forward', '-10'],
    ['− 10 deg', 'forward', '-10 deg'],
    ['0', 'forward', '0'],
    ['0', 'upright', '0'],
    ['-0.0', 'upright', '0.0'],
    ['=2*5', 'forward', '=2*5'],
    ['-10', undefined, '-10'],
  ] as const)('takes %j of a transom that leans %s as %j', (text, lean, expected) => {
    expect(signedSlope(text, lean)).toEqual({ ok: true, text: expected });
  });

  it.each([
    ['-10', 'aft', 'has a minus'],
    ['+10', 'forward', 'has a plus'],
    ['3', 'upright', 'say which way'],
  ] as const)('refuses %j of a transom that leans %s', (text, lean, says) => {
    const signed = signedSlope(text, lean);
    expect(signed).toMatchObject({ ok: false });
    expect(signed.ok ? '' : signed.why).toContain(says);
  });
});
