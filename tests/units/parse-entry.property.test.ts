import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Ask, Entry, EntryKind } from '../../src/units/entry.ts';
import { LONGEST_ENTRY, parseEntry } from '../../src/units/parse-entry.ts';
import { isNearestDouble } from './exact-double.ts';

const inches: Ask = { name: 'lower reach', kind: 'length', unit: 'mm', bare: 'in' };

const numberIn = (entry: Entry): number => {
  if (!entry.ok || entry.empty || typeof entry.value !== 'number') throw new Error(JSON.stringify(entry));
  return entry.value;
};

const kinds: readonly EntryKind[] = ['length', 'number', 'whole', 'flag', 'word'];
const units = ['mm', 'deg', 'kn', 'N', 'N·m', 'MPa', 'kg', 'kg/m³', 'mm²', 'm²', '–', '%', 'turns', ''];

const anyAsk: fc.Arbitrary<Ask> = fc.record({
  name: fc.constant('the thing'),
  kind: fc.constantFrom(...kinds),
  unit: fc.constantFrom(...units),
  words: fc.constant(['solid', 'cored']),
  bare: fc.constantFrom('mm', 'in'),
});

const shard = fc.constantFrom(
  ...Array.from('0123456789.,+-−/⁄∕\'"′″’” \u00a0\u202fe%°⅜½²³·^=\t\u202e'),
  ...[
    'mm',
    'in',
    'ft',
    'kn',
    'kN',
    'KN',
    'kg/m3',
    'N/mm²',
    'deg',
    '3/8',
    '2 3/8',
    '1,500',
    '12',
    '000',
    'in.',
  ],
);
const nearlyAnEntry = fc.array(shard, { maxLength: 14 }).map((shards) => shards.join(''));

const expectHonest = (text: string, ask: Ask): void => {
  const entry = parseEntry(text, ask);
  if (!entry.ok) {
    expect(entry.why).toContain('the thing');
    expect(entry.why).not.toMatch(/\p{Cc}|\p{Cs}|undefined/u);
    return;
  }
  if (entry.empty) {
    expect(text.trim()).toBe('');
    return;
  }
  expect(entry.typed).toBe(text.trim());
  if (typeof entry.value !== 'number') return;
  expect(Number.isFinite(entry.value)).toBe(true);
  expect(Object.is(entry.value, -0)).toBe(false);
  if (ask.kind === 'whole') expect(Number.isSafeInteger(entry.value)).toBe(true);
};

describe('parseEntry on anything', () => {
  it('never throws on any string and never answers with what is no number', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 300 }), anyAsk, (text, ask) =>
        expectHonest(text, ask),
      ),
      { numRuns: 5000 },
    );
  });

  it('never throws on lone halves of surrogate pairs', () => {
    const unit = fc.integer({ min: 0xd7f0, max: 0xe010 }).map((code) => String.fromCharCode(code));
    fc.assert(
      fc.property(fc.string({ unit, maxLength: 20 }), anyAsk, (text, ask) => expectHonest(text, ask)),
      { numRuns: 1000 },
    );
  });

  it('never throws on shuffled pieces of entries', () => {
    fc.assert(
      fc.property(nearlyAnEntry, anyAsk, (text, ask) => expectHonest(text, ask)),
      { numRuns: 20000 },
    );
  });

  it('gives the same value read again from what it kept', () => {
    fc.assert(
      fc.property(nearlyAnEntry, anyAsk, (text, ask) => {
        const first = parseEntry(text, ask);
        fc.pre(first.ok);
        expect(parseEntry(first.typed, ask)).toEqual(first);
      }),
      { numRuns: 5000 },
    );
  });
});

describe('time', () => {
  const heads = [
    '1',
    ' ',
    '-',
    '/',
    '"',
    "'",
    'a',
    '²',
    '.',
    ',',
    '1 ',
    '1/',
    '1,000',
    '⅜',
    'N/',
    'a·',
    '1e',
    '٣',
    '°',
    'mm.',
  ];
  const millisecondsFor = (text: string): number => {
    const start = performance.now();
    parseEntry(text, inches);
    return performance.now() - start;
  };
  const best = (text: string): number => Math.min(...[1, 2, 3].map(() => millisecondsFor(text)));

  it.each(heads)('%j repeated up to the longest entry is answered in a moment', (head) => {
    const text = head.repeat(LONGEST_ENTRY).slice(0, LONGEST_ENTRY - 1);
    expect(best(`${text}!`)).toBeLessThan(20);
  });

  it.each(heads)('%j repeated a million times is answered in a moment', (head) => {
    const text = head.repeat(1_000_000 / head.length);
    expect(best(text)).toBeLessThan(100);
    expect(best(` ${text}!`)).toBeLessThan(100);
  });
});

describe('exactness against whole-number arithmetic', () => {
  const whole = fc.bigInt({ min: 0n, max: 10n ** 12n });
  const under = fc.bigInt({ min: 1n, max: 10n ** 6n });
  // Proper fractions only: 1 500/8 looks like grouped thousands and is refused.
  const proper = under.chain((low) => fc.tuple(fc.bigInt({ min: 0n, max: low - 1n }), fc.constant(low)));
  const spelled = fc.constantFrom<(w: bigint, a: bigint, b: bigint) => string>(
    (w, a, b) => `${w} ${a}/${b}`,
    (w, a, b) => `${w}-${a}/${b} in`,
    (w, a, b) => `${w} ${a}⁄${b}"`,
    (w, a, b) => `${w}\u202f${a} / ${b} inches`,
  );

  it('a mixed number of inches is the double nearest to it in mm', () => {
    fc.assert(
      fc.property(whole, proper, spelled, fc.boolean(), (w, [a, b], spell, minus) => {
        fc.pre(w > 0n || a > 0n);
        const value = numberIn(parseEntry(`${minus ? '−' : ''}${spell(w, a, b)}`, inches));
        const over = (w * b + a) * 254n * (minus ? -1n : 1n);
        expect(Math.sign(value)).toBe(minus ? -1 : 1);
        expect(isNearestDouble(value, over, 10n * b)).toBe(true);
      }),
      { numRuns: 3000 },
    );
  });

  it('feet, inches and a fraction are the double nearest to them in mm', () => {
    const feet = fc.bigInt({ min: 1n, max: 1000n });
    fc.assert(
      fc.property(feet, fc.bigInt({ min: 0n, max: 11n }), proper, (ft, inch, [a, b]) => {
        const value = numberIn(parseEntry(`${ft}' ${inch} ${a}/${b}"`, inches));
        expect(isNearestDouble(value, ((ft * 12n + inch) * b + a) * 254n, 10n * b)).toBe(true);
      }),
      { numRuns: 2000 },
    );
  });

  it('a decimal in m, cm, mm or inches is the double nearest to it in mm', () => {
    const scale = fc.constantFrom<[string, bigint, bigint]>(
      ['m', 1000n, 1n],
      ['cm', 10n, 1n],
      ['mm', 1n, 1n],
      ['in', 254n, 10n],
      ['ft', 3048n, 10n],
    );
    const digits = fc.bigInt({ min: 1n, max: 10n ** 25n });
    fc.assert(
      fc.property(digits, fc.integer({ min: 1, max: 20 }), scale, (n, decimals, [unit, up, down]) => {
        const text = n.toString().padStart(decimals + 1, '0');
        const typed = `${text.slice(0, -decimals)}.${text.slice(-decimals)} ${unit}`;
        const value = numberIn(parseEntry(typed, inches));
        expect(isNearestDouble(value, n * up, down * 10n ** BigInt(decimals))).toBe(true);
      }),
      { numRuns: 2000 },
    );
  });

  it('a number typed as a program prints it is that number', () => {
    const ask: Ask = { name: 'factor', kind: 'number', unit: '–', bare: 'mm' };
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (value) => {
        fc.pre(value === 0 || Math.abs(value) >= 1e-300);
        expect(numberIn(parseEntry(String(value), ask))).toBe(value + 0);
      }),
      { numRuns: 2000 },
    );
  });
});
