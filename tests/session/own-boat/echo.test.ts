import { describe, expect, it } from 'vitest';
import { echoOf } from '../../../src/session/own-boat/echo.ts';
import { FRACTION_KEYS } from '../../../src/session/own-boat/fraction-keys.ts';
import { firstInputs } from '../../../src/session/own-boat/steps.ts';

const top = firstInputs.find((it) => it.name === 'transom_top') ?? expect.fail();

describe('echoOf', () => {
  it('says back what was understood, inches beside millimetres where they are in use', () => {
    expect(echoOf(top, { value: 901.7, origin: 'reading' }, 'mm')).toBe('Read as 901.7 mm.');
    expect(echoOf(top, { value: 901.7, origin: 'reading' }, 'in')).toBe('Read as 901.7 mm (35 1⁄2 in).');
  });

  it('asks to read an unusual value once more', () => {
    expect(echoOf(top, { value: 90, origin: 'reading' }, 'mm')).toBe(
      'Read as 90 mm. Most lie between 400 mm and 1500 mm: read it once more.',
    );
  });

  it('is silent about a formula', () => {
    expect(echoOf(top, { value: null, formula: '=transom_bottom + 800', origin: 'reading' }, 'mm')).toBe('');
  });
});

describe('FRACTION_KEYS', () => {
  it('are the fifteen sixteenths below one, reduced', () => {
    expect(FRACTION_KEYS).toHaveLength(15);
    expect(FRACTION_KEYS.map(([over, under]) => (over / under) * 16)).toEqual(
      Array.from({ length: 15 }, (_, i) => i + 1),
    );
    expect(FRACTION_KEYS.every(([over]) => over % 2 === 1)).toBe(true);
  });
});
