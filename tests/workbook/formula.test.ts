import fc from 'fast-check';
import { HyperFormula } from 'hyperformula';
import { describe, expect, it } from 'vitest';
import { catalogue, tableFunctions } from '../../src/calc/catalogue.ts';
import { readFormula } from '../../src/workbook/formula.ts';
import { formulaWords } from '../../src/workbook/formula-words.ts';
import { registerLibrary } from '../../src/workbook/functions.ts';

const NAMES = new Set(['shim_stack', 'rudder_gap', 'rudder_gap_room']);
const read = (text: string) => readFormula(text, (name) => NAMES.has(name));
const refusalOf = (text: string): string | undefined => {
  const it = read(text);
  return 'why' in it ? it.why : undefined;
};

// The list that plans may rely on, besides the library's own functions.
const STANDARD = [
  ...[
    'IF',
    'IFERROR',
    'AND',
    'OR',
    'NOT',
    'MIN',
    'MAX',
    'SUM',
    'AVERAGE',
    'COUNT',
    'ABS',
    'SIGN',
    'INT',
    'MOD',
  ],
  ...[
    'ROUND',
    'ROUNDUP',
    'ROUNDDOWN',
    'SQRT',
    'EXP',
    'LN',
    'LOG10',
    'POWER',
    'PI',
    'SIN',
    'COS',
    'TAN',
    'ASIN',
  ],
  ...['ACOS', 'ATAN', 'ATAN2', 'DEGREES', 'RADIANS', 'TRUE', 'FALSE'],
];

describe('the functions of a formula', () => {
  it('are the closed list and the library’s own', () => {
    expect([...formulaWords].sort()).toEqual(
      [...STANDARD, ...catalogue.map((it) => it.id), ...tableFunctions.map((it) => it.id)].sort(),
    );
  });

  it('are refused by name when the engine has them and the list has not', () => {
    registerLibrary();
    const others = HyperFormula.getRegisteredFunctionNames('enGB').filter((id) => !formulaWords.has(id));
    expect(others.length).toBeGreaterThan(300);
    for (const id of others) expect(refusalOf(`=${id}(1)`)).toBe(`${id} is not a function of this workbook.`);
    for (const id of ['COUNTIF', 'SUMIF', 'MATCH', 'RAND', 'NOW', 'REPT', 'OFFSET', 'INDEX'])
      expect(others).toContain(id);
  });

  it('are refused deep inside, in any letters, with or without a space before the bracket', () => {
    for (const text of ['=1+MIN(2;Rand())', '=rAnD ( )', '=IF(TRUE;1;HYPERLINK("x"))', '=NO_ANSWER("x")']) {
      expect(refusalOf(text)).toMatch(/^\w+ is not a function of this workbook\.$/);
    }
  });
});

describe('the names of a formula', () => {
  it('are listed once each, in small letters', () => {
    expect(read('=SHIM_STACK * 2 + shim_stack - rudder_gap_room')).toMatchObject({
      names: ['shim_stack', 'rudder_gap_room'],
    });
  });

  it('are refused by name when there is no such cell', () => {
    expect(refusalOf('=shim_stack + shim_stock')).toBe('There is no cell named shim_stock.');
    expect(refusalOf('=PI * 2')).toBe('There is no cell named PI.');
  });

  it('are not letters and numbers, ranges, sheets or absolute places', () => {
    expect(refusalOf('=A1 + 1')).toContain('Cells are called by their names here');
    for (const text of [
      '=A1:B2',
      '=$A$1',
      '=plan!A1',
      "='plan'!A1",
      '=shim_stack#',
      '={1;2}',
      '=[x]',
      '=@shim_stack',
    ]) {
      expect(refusalOf(text)).toBeTypeOf('string');
    }
  });
});

describe('the caps of a formula', () => {
  it('stop at 2000 characters', () => {
    const sum = (length: number): string => `=1${' '.repeat(length - 4)}+1`;
    expect(sum(2000)).toHaveLength(2000);
    expect(refusalOf(sum(2000))).toBeUndefined();
    expect(refusalOf(sum(2001))).toContain('2000 characters at most; this one has 2001');
  });

  it('stop at 32 brackets deep', () => {
    const nested = (depth: number): string => `=${'('.repeat(depth)}1${')'.repeat(depth)}`;
    expect(refusalOf(nested(32))).toBeUndefined();
    expect(refusalOf(nested(33))).toContain('32 deep at most; here they stand 33 deep');
    const calls = (depth: number): string => `=${'ABS('.repeat(depth)}1${')'.repeat(depth)}`;
    expect(refusalOf(calls(32))).toBeUndefined();
    expect(refusalOf(calls(33))).toContain('33 deep');
  });

  it('stop at 300 parts', () => {
    const terms = (parts: number): string => `=-${'1+'.repeat((parts - 2) / 2)}1`;
    expect(refusalOf(terms(300))).toBeUndefined();
    expect(refusalOf(terms(302))).toContain('300 parts at most; this one has 302');
  });
});

describe('what is not a formula', () => {
  it.each([
    ['shim_stack', 'starts with ='],
    ['', 'starts with ='],
    ['=', 'empty after its ='],
    ['=(1+2', 'opened and never closed'],
    ['=((1', '2 brackets are opened'],
    ['=1)', 'never opened'],
    ['=1 ~ 2', '“~”'],
    ['="open', '“"”'],
  ])('%s', (text, why) => {
    expect(refusalOf(text)).toContain(why);
  });

  it('never throws, whatever is typed', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 60 }), (text) => {
        const it = read(`=${text}`);
        expect('why' in it ? it.why : it.text).toMatch(/[.=]/);
      }),
      { numRuns: 500 },
    );
  });
});

describe('what the engine is handed', () => {
  it('has one separator, small exponents and no gap before a function’s bracket', () => {
    expect(read('=SUM (1E3; 2,3)')).toEqual({ text: '=SUM( 1e3 , 2 , 3 )', names: [] });
  });
});
