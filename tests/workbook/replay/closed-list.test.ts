import { describe, expect, it } from 'vitest';
import { catalogue, tableFunctions } from '../../../src/calc/catalogue.ts';
import type { Content } from '../../../src/workbook/engine.ts';
import { readFormula } from '../../../src/workbook/formula.ts';
import { formulaWords } from '../../../src/workbook/formula-words.ts';
import { bothWays } from './both-ways.ts';

/** Cells that formulas are tried on: numbers that trip the engine's rounding, flags, words, an error of each kind. */
const CELLS: Readonly<Record<string, Content>> = {
  zero: 0,
  one: 1,
  minus: -1,
  half: -0.5,
  near_one: 1 + 4e-14,
  tenth: 0.1,
  big: 1.7e308,
  tiny: 5e-320,
  angle: 37.25,
  places: -2,
  yes: true,
  no: false,
  word: 'solid',
  other_word: 'Sölid',
  figure: { formula: '=" 12.5 " & ""' },
  share: { formula: '="5" & "%"' },
  truth: { formula: '="tr" & "ue"' },
  endless: { formula: '="1e999" & ""' },
  blank: { formula: '="" & ""' },
  percent_cell: { formula: '=angle%' },
  nothing: null,
  divided: { formula: '=1/zero' },
  unknown: { formula: '=SQRT(minus)' },
  not_number: { formula: '=1+word' },
  hollow: { formula: '=IF(yes,)' },
  sum_off: { formula: '=0.1+0.2-0.3' },
};

/** A survey table, with a row that lacks a figure; the last figure of each is what it may be off. */
const TABLE = 'transom_readings';
const ROWS = [
  [0, 500, 3],
  [200, 470, 3],
  [300, null, 3],
  [450, 425, 1],
  [700, 400, 3],
];

const NAMES = Object.keys(CELLS);
const LITERALS = ['2', '"abc"', '""', 'TRUE', '1e-13', 'PI()', '3%', '-4'];
const POOL = [...NAMES, ...LITERALS];

const STANDARD = [...formulaWords].filter((word) =>
  [...catalogue, ...tableFunctions].every((record) => record.id !== word),
);
const SIGNS = ['+', '-', '*', '/', '^', '&', '=', '<>', '<', '>', '<=', '>='];

function* standardFormulas(): Generator<string> {
  for (const sign of SIGNS) for (const a of POOL) for (const b of POOL) yield `=${a}${sign}${b}`;
  for (const a of POOL) {
    yield `=-${a}`;
    yield `=+${a}`;
    yield `=(${a})%`;
    yield `=-${a}^2`;
  }
  for (const word of STANDARD) {
    yield `=${word}()`;
    for (const a of POOL) {
      yield `=${word}(${a})`;
      yield `=${word}(;${a})`;
      for (const b of NAMES) yield `=${word}(${a};${b})`;
    }
    for (let i = 0; i < POOL.length; i++) {
      const [a, b, c] = [POOL[i], POOL[(i * 7 + 3) % POOL.length], POOL[(i * 5 + 11) % POOL.length]];
      yield `=${word}(${a};${b};${c})`;
      yield `=${word}(${a};${b};${c};${a};${b})`;
      yield `=${word}(${a};;${c})`;
    }
  }
}

function* libraryFormulas(): Generator<string> {
  for (const { id, example, arguments: parameters } of catalogue) {
    const given = example.given.map((value) => (typeof value === 'object' ? TABLE : String(value)));
    const last = parameters.at(given.length);
    if (last?.type === 'table') {
      for (const follow of ['TRUE', 'FALSE', 'yes', 'word', 'divided']) {
        yield `=${id}(${[...given, `FACE_PROFILE(${follow};${TABLE};1;500;angle;2)`].join(';')})`;
      }
    }
    yield `=${id}(${given.join(';')})`;
    yield `=${id}()`;
    if (!given.includes(TABLE)) yield `=${id}(${[...given, ...given].join(';')})`;
    for (let i = 0; i < given.length; i++) {
      if (given[i] === TABLE) continue;
      for (const other of [...NAMES, '""', '"abc"', '-3', '']) {
        yield `=${id}(${given.with(i, other).join(';')})`;
      }
    }
  }
}

const differences = (formulas: Iterable<string>) => bothWays(CELLS, new Map([[TABLE, ROWS]]), formulas);

describe('every word of the closed list', { timeout: 120_000 }, () => {
  it('gives in the replay what the engine gives, whatever is put in', () => {
    // A formula with more or fewer values than its function takes is refused before any engine sees it.
    const all = [...standardFormulas()];
    const readable = all.filter((text) => !('why' in readFormula(text, (name) => name in CELLS)));
    expect(readable.length).toBeLessThan(all.length);
    const { tried, wrong } = differences(readable);
    expect(tried).toBeGreaterThan(10_000);
    expect(wrong.length, wrong.slice(0, 20).join('\n')).toBe(0);
  });

  it('and every library function, rightly called or not', () => {
    const { tried, wrong } = differences(libraryFormulas());
    expect(tried).toBeGreaterThan(5000);
    expect(wrong.length, wrong.slice(0, 20).join('\n')).toBe(0);
  });
});
