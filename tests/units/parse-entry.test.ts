import { describe, expect, it } from 'vitest';
import type { Ask, Entry } from '../../src/units/entry.ts';
import { LONGEST_ENTRY, parseEntry } from '../../src/units/parse-entry.ts';

const inMm: Ask = { name: 'lower reach', kind: 'length', unit: 'mm', bare: 'mm' };
const inInches: Ask = { ...inMm, bare: 'in' };
const number = (unit: string, name = 'the input'): Ask => ({ name, kind: 'number', unit, bare: 'mm' });
const whole: Ask = { name: 'shim count', kind: 'whole', unit: '–', bare: 'mm' };
const flag: Ask = { name: 'stop collar', kind: 'flag', unit: '–', bare: 'mm' };
const word: Ask = {
  name: 'transom build',
  kind: 'word',
  unit: '–',
  words: ['solid', 'cored', 'wood', 'metal'],
  bare: 'mm',
};

const readOf = (entry: Entry): unknown => (entry.ok && !entry.empty ? [entry.value, entry.unit] : entry);
const whyOf = (entry: Entry): string => (entry.ok ? `taken: ${JSON.stringify(entry)}` : entry.why);

describe('lengths', () => {
  // 1 in = 25.4 mm exactly (NIST SP 811, 2008, B.8; from memory); the rest is arithmetic.
  it.each([
    ['4', 4, 'mm'],
    ['60', 60, 'mm'],
    ['60 mm', 60, 'mm'],
    ['60mm', 60, 'mm'],
    ['60 MM', 60, 'mm'],
    ['6 cm', 60, 'cm'],
    ['0.06 m', 60, 'm'],
    ['2 3/8', 2.375, 'mm'],
    ['2 3/8 in', 60.325, 'in'],
    ['2 3/8in', 60.325, 'in'],
    ['2 3/8 in.', 60.325, 'in'],
    ['2 3/8 inches', 60.325, 'in'],
    ['2 3/8"', 60.325, 'in'],
    ['2 3/8″', 60.325, 'in'],
    ['2 3/8”', 60.325, 'in'],
    ["2 3/8''", 60.325, 'in'],
    ['2-3/8"', 60.325, 'in'],
    ['2⅜"', 60.325, 'in'],
    ['2 ⅜"', 60.325, 'in'],
    ['2-⅜"', 60.325, 'in'],
    ['⅜"', 9.525, 'in'],
    ['2 3⁄8"', 60.325, 'in'],
    ['2 3∕8"', 60.325, 'in'],
    ['2 3 / 8 "', 60.325, 'in'],
    ['3/8 in', 9.525, 'in'],
    ['11/8 in', 34.925, 'in'],
    ['2 6/16 in', 60.325, 'in'],
    ['2 8/3', 14 / 3, 'mm'],
    ['5\' 2 3/8"', 1584.325, 'ft in'],
    ['5’ 2 3/8”', 1584.325, 'ft in'],
    ['5′2⅜″', 1584.325, 'ft in'],
    ["5' 2 3/8", 1584.325, 'ft in'],
    ['5\'-2 3/8"', 1584.325, 'ft in'],
    ['5 ft 2 in', 1574.8, 'ft in'],
    ['5ft2in', 1574.8, 'ft in'],
    ['5ft2', 1574.8, 'ft in'],
    ['5ft2 3/8', 1584.325, 'ft in'],
    ['5 ft 11 63/64 in', 5 * 304.8 + 11.984375 * 25.4, 'ft in'],
    ['5 ft 2', 1574.8, 'ft in'],
    ['5 feet 2 inches', 1574.8, 'ft in'],
    ['5 ft 0 in', 1524, 'ft in'],
    ['5 ft', 1524, 'ft'],
    ["5'", 1524, 'ft'],
    ['5 1/2 ft', 1676.4, 'ft'],
    ['1,5', 1.5, 'mm'],
    ['1,5 in', 38.1, 'in'],
    ['0,500', 0.5, 'mm'],
    ['1234,567', 1234.567, 'mm'],
    ['1.500', 1.5, 'mm'],
    ['.5', 0.5, 'mm'],
    ['007', 7, 'mm'],
    ['1e3', 1000, 'mm'],
    ['1E3', 1000, 'mm'],
    ['1e−3', 0.001, 'mm'],
    ['1.5e+2 mm', 150, 'mm'],
    ['0e999999999', 0, 'mm'],
    ['+4', 4, 'mm'],
    ['-4', -4, 'mm'],
    ['−4', -4, 'mm'],
    ['− 4', -4, 'mm'],
    ['-2 3/8', -2.375, 'mm'],
    ['−2⅜ in', -60.325, 'in'],
    ['-2-3/8"', -60.325, 'in'],
    ['-5\' 2 3/8"', -1584.325, 'ft in'],
    ['-0', 0, 'mm'],
    ['  4  ', 4, 'mm'],
    ['60\u00a0mm', 60, 'mm'],
    ['60\u202fmm', 60, 'mm'],
    ['2\u20093/8\u202fin', 60.325, 'in'],
  ])('%s', (text, value, unit) => {
    expect(readOf(parseEntry(text, inMm))).toEqual([value, unit]);
  });

  it.each([
    ['4', 101.6, 'in'],
    ['2 3/8', 60.325, 'in'],
    ['2⅜', 60.325, 'in'],
    ['2-3/8', 60.325, 'in'],
    ['1,5', 38.1, 'in'],
    ['-2 3/8', -60.325, 'in'],
    ['60 mm', 60, 'mm'],
    ['0.06 m', 60, 'm'],
  ])('%s where inches are shown', (text, value, unit) => {
    expect(readOf(parseEntry(text, inInches))).toEqual([value, unit]);
  });

  // Exact by definition, check value 13 of the project's list (closed form).
  it.each([
    ['1/64', 0.396875],
    ['1/32', 0.79375],
    ['1/16', 1.5875],
    ['1/8', 3.175],
    ['5/16', 7.9375],
    ['3/8', 9.525],
    ['1/2', 12.7],
    ['1', 25.4],
  ])('%s in is %s mm', (text, mm) => {
    expect(readOf(parseEntry(text, inInches))).toEqual([mm, 'in']);
  });

  it('never gives minus zero', () => {
    const entry = parseEntry('-0.0', inMm);
    expect(entry.ok && !entry.empty && Object.is(entry.value, 0)).toBe(true);
  });

  it('keeps what was typed, without the spaces round it', () => {
    expect(parseEntry('  2 3/8" ', inMm)).toEqual({
      ok: true,
      empty: false,
      value: 60.325,
      unit: 'in',
      typed: '2 3/8"',
    });
  });
});

describe('refused lengths', () => {
  it.each([
    ['2 3/0', 'the number under the line cannot be 0'],
    ['3/0 in', 'the number under the line cannot be 0'],
    ['3/', 'there is no number under the line'],
    ['1,500', 'write 1500 or 1.5'],
    ['-1,500', 'write 1500 or 1.5'],
    ['12,345 mm', 'write 12345 or 12.345'],
    ['1,000', 'write 1000 or 1.'],
    ['1,000,000', 'write 1000000'],
    ['1,500.25', 'write 1500.25'],
    ['1.500,25', 'write 1500.25'],
    ['1.500.000', 'write 1500000'],
    ['1 500', 'write 1500 or 1.5'],
    ['1\u202f500 mm', 'write 1500 or 1.5'],
    ['1 500 000', 'write 1500000'],
    ['1 500/8', 'write 1500 or 1.5'],
    ["1'500", 'under 12'],
    ['1.2.3', 'more than one decimal sign'],
    ['1,5,3', 'more than one decimal sign'],
    ['4.', 'write 4'],
    ['5,', 'write 5'],
    ['.', 'it holds no number'],
    ['7 kn', 'kn is a unit of speed'],
    ['12 deg', 'deg is a unit of angle'],
    ['12°', 'deg is a unit of angle'],
    ['30 %', '% has no place in it'],
    ['9 in²', 'in² is a unit of area'],
    ['7 KN', 'write kn or kN'],
    ['4x', 'x is neither a number nor a unit'],
    ['4O', 'O is neither a number nor a unit'],
    ['l2', 'l2 stands where its number should begin'],
    ['mm 60', 'mm stands where its number should begin'],
    ['0x10', 'x is neither'],
    ['1_500', '_ has no place in it'],
    ['abc', 'it holds no number'],
    ['NaN', 'it holds no number'],
    ['Infinity', 'it holds no number'],
    ['-∞', '∞ has no place in it'],
    ['1e400', 'larger than can be counted'],
    ['-1e400', 'larger than can be counted'],
    ['1e999999999999', 'larger than can be counted'],
    ['1e308 m', 'larger than can be counted'],
    ['1e-400', 'smaller than can be counted'],
    ['1e-999999999999', 'smaller than can be counted'],
    ['1e', 'e is neither'],
    ['1e3/8', 'whole numbers, as in 3/8'],
    ['2.5 3/8', 'before a fraction stands a whole number'],
    ['2.5⅜', 'before a fraction stands a whole number'],
    ['2.5/8', 'whole numbers, as in 3/8'],
    ['2 3,5/8', 'whole numbers, as in 3/8'],
    ['2 3', 'it holds two numbers, 2 and 3'],
    ['2 3/8/2', '/2 is left over behind 2 3/8'],
    ['3/-8', 'there is no number under the line'],
    ['2 - 3/8', 'a sign stands only in front'],
    ['2 -3/8', 'a sign stands only in front'],
    ['2- 3/8', 'a sign stands only in front'],
    ['2−3/8', 'a sign stands only in front'],
    ['2-3', 'a sign stands only in front'],
    ['2+3', 'a sign stands only in front'],
    ['--5', '- stands where its number should begin'],
    ['+-5', '- stands where its number should begin'],
    ['⅜⅜', '⅜ is left over behind ⅜'],
    ['60 mm mm', 'mm is left over behind 60 mm'],
    ['5 m 20 cm', '20 cm is left over behind 5 m'],
    ['5 ft 14 in', 'under 12'],
    ['5 ft 12 in', 'under 12'],
    ['5 ft 2 mm', 'after feet come inches, not mm'],
    ['5.5 ft 2 in', 'the feet are a whole number'],
    ['5 ft -2 in', 'a sign stands only in front'],
    ['2" 5\'', '5\' is left over behind 2"'],
    ['\u202e5', '[U+202E] has no place in it'],
    ['2\t3/8', '[U+0009] has no place in it'],
    ['4\n5', '[U+000A] has no place in it'],
    ['\u0664', 'has no place in it'],
    ['\ud800', '[U+D800] has no place in it'],
    ['=2*3', 'is a formula'],
    ['yes', 'it holds no number'],
  ])('%j: %s', (text, cause) => {
    const why = whyOf(parseEntry(text, inMm));
    expect(why).toContain(cause);
    expect(why).toContain('lower reach');
    expect(why.endsWith('.')).toBe(true);
  });

  it('speaks as the voice of the project asks', () => {
    expect(whyOf(parseEntry('2 3/0', inMm))).toBe(
      '2 3/0 is not a length: the number under the line cannot be 0. For lower reach, write a length such as 60 mm, 6 cm or 2 3/8 in.',
    );
    expect(whyOf(parseEntry('60 mm', number('kn', 'boat speed')))).toBe(
      '60 mm is not a speed: mm is a unit of length. For boat speed, write a speed such as 7 kn or 3.6 m/s.',
    );
    expect(whyOf(parseEntry('2.5', whole))).toBe(
      '2.5 is not a whole number: it lies between two. For shim count, write a whole number such as 3.',
    );
  });

  it('takes a text of the longest length and refuses one sign more, quoting only its head', () => {
    const zeros = '0'.repeat(LONGEST_ENTRY - 1);
    expect(readOf(parseEntry(`${zeros}4`, inMm))).toEqual([4, 'mm']);
    const why = whyOf(parseEntry(`${zeros}04`, inMm));
    expect(why).toContain(`${LONGEST_ENTRY + 1} characters long`);
    expect(why.length).toBeLessThan(200);
  });
});

describe('other numbers', () => {
  it.each([
    ['7 kn', 'kn', 7, 'kn'],
    ['7 knots', 'kn', 7, 'kn'],
    ['7', 'kn', 7, 'kn'],
    ['463 m/s', 'kn', 900, 'm/s'],
    ['1.852 km/h', 'kn', 1, 'km/h'],
    ['12 deg', 'deg', 12, 'deg'],
    ['12°', 'deg', 12, 'deg'],
    ['−0,5 °', 'deg', -0.5, 'deg'],
    ['12 1/2 degrees', 'deg', 12.5, 'deg'],
    ['30 %', '–', 0.3, '%'],
    ['30%', '–', 0.3, '%'],
    ['0.95', '–', 0.95, '–'],
    ['10 %', '%', 10, '%'],
    ['10', '%', 10, '%'],
    ['1/3', '–', 1 / 3, '–'],
    ['0.85 kN', 'N', 850, 'kN'],
    ['1 lbf', 'N', 4.4482216152605, 'lbf'],
    ['205 N/mm²', 'MPa', 205, 'MPa'],
    ['193 GPa', 'MPa', 193000, 'GPa'],
    ['66 lb', 'kg', 29.93709642, 'lb'],
    ['1.025 g/cm3', 'kg/m³', 1025, 'g/cm³'],
    ['1025 kg/m3', 'kg/m³', 1025, 'kg/m³'],
    ['150 cm2', 'mm²', 15000, 'cm²'],
    ['90 Nm', 'N·m', 90, 'N·m'],
    ['4', 'mm', 4, 'mm'],
    ['3', 'turns', 3, 'turns'],
  ])('%s for an input in %s', (text, unit, value, typedUnit) => {
    expect(readOf(parseEntry(text, { ...number(unit), bare: 'in' }))).toEqual([value, typedUnit]);
  });

  it.each([
    ['7 mm', 'kn'],
    ['7 kN', 'kn'],
    ['7 kn', 'N'],
    ['3 mm', '–'],
    ['30 %', 'deg'],
    ['12 rad', 'deg'],
    ["12° 30'", 'deg'],
    ['3 mm', 'turns'],
    ['yes', '–'],
  ])('%s is refused for an input in %s', (text, unit) => {
    expect(whyOf(parseEntry(text, number(unit, 'this one')))).toContain('For this one, write');
  });
});

describe('whole numbers', () => {
  it.each([
    ['4', 4],
    ['4.0', 4],
    ['8/2', 4],
    ['1e1', 10],
    ['-3', -3],
    ['0', 0],
  ])('%s', (text, value) => {
    expect(readOf(parseEntry(text, whole))).toEqual([value, '–']);
  });

  it('takes a length that comes out whole in its base unit', () => {
    expect(readOf(parseEntry('1 cm', { ...whole, unit: 'mm' }))).toEqual([10, 'cm']);
    expect(readOf(parseEntry('10', { ...whole, unit: 'mm', bare: 'in' }))).toEqual([10, 'mm']);
    expect(whyOf(parseEntry('1/2 in', { ...whole, unit: 'mm' }))).toContain('it lies between two');
  });

  it.each([
    ['2.5', 'it lies between two'],
    ['2 1/2', 'it lies between two'],
    ['half', 'it holds no number'],
    ['3 mm', 'mm is a unit of length'],
    ['300 %', '% has no place in it'],
    ['9007199254740993', 'larger than can be counted'],
  ])('%s is refused: %s', (text, cause) => {
    expect(whyOf(parseEntry(text, whole))).toContain(cause);
  });
});

describe('flags and words', () => {
  it.each([
    ['TRUE', true],
    ['true', true],
    ['Yes', true],
    ['on', true],
    ['FALSE', false],
    ['no', false],
    [' Off ', false],
  ])('%s', (text, value) => {
    expect(readOf(parseEntry(text, flag))).toEqual([value, '']);
  });

  it.each(['maybe', '1', '0', 'y', 'true false', 'constructor'])('%s is neither yes nor no', (text) => {
    expect(whyOf(parseEntry(text, flag))).toBe(
      `${text} is neither yes nor no. For stop collar, write yes or no.`,
    );
  });

  it('gives a listed word as it is listed', () => {
    expect(readOf(parseEntry(' CORED', word))).toEqual(['cored', '']);
    expect(readOf(parseEntry('plain  bar', { ...word, words: ['Plain bar'] }))).toEqual(['Plain bar', '']);
  });

  it('names the words when another is typed', () => {
    expect(whyOf(parseEntry('steel', word))).toBe(
      'steel is not among the words for transom build. Write solid, cored, wood or metal.',
    );
    expect(whyOf(parseEntry('steel', { ...word, words: undefined }))).toContain('no words are listed');
  });
});

describe('nothing typed', () => {
  it.each(['', '   ', '\u00a0\u202f', '\n'])('%j is empty, whatever is asked', (text) => {
    for (const ask of [inMm, inInches, number('kn'), whole, flag, word]) {
      expect(parseEntry(text, ask)).toEqual({ ok: true, empty: true, typed: '' });
    }
  });
});
