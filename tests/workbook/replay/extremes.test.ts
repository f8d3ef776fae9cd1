import { describe, expect, it } from 'vitest';
import { catalogue } from '../../../src/calc/catalogue.ts';
import { STANDARD_WORDS } from '../../../src/plan/standard-words.ts';
import type { Content } from '../../../src/workbook/engine.ts';
import { readFormula } from '../../../src/workbook/formula.ts';
import { bothWays } from './both-ways.ts';

/** Numbers at the ends of what a double can hold, and where its whole numbers end. */
const CELLS: Readonly<Record<string, Content>> = {
  zero: 0,
  minus_zero: -0,
  one: 1,
  huge: 1e300,
  minus_huge: -1e300,
  slight: 1e-300,
  minus_slight: -1e-300,
  most: Number.MAX_VALUE,
  minus_most: -Number.MAX_VALUE,
  least: Number.MIN_VALUE,
  minus_least: -Number.MIN_VALUE,
  denormal: 5e-310,
  least_normal: 2 ** -1022,
  whole: 2 ** 53,
  past_whole: 2 ** 53 + 2,
  minus_whole: -(2 ** 53) - 2,
  half: 2 ** 52 + 0.5,
  power: 1024,
  minus_power: -1075,
  quarter_turn: Math.PI / 2,
};

const NAMES = Object.keys(CELLS);
const SIGNS = ['+', '-', '*', '/', '^', '&', '=', '<>', '<', '>', '<=', '>='];

function* standardFormulas(): Generator<string> {
  for (const a of NAMES) {
    yield `=-${a}`;
    yield `=(${a})%`;
    yield `=${a}`;
    for (const b of NAMES) {
      for (const sign of SIGNS) yield `=${a}${sign}${b}`;
      for (const word of STANDARD_WORDS) yield `=${word}(${a};${b})`;
      yield `=IF(${a};${b};zero)`;
      yield `=SUM(${a};${b};-${a})`;
      yield `=AVERAGE(${a};${b};${a})`;
    }
    for (const word of STANDARD_WORDS) yield `=${word}(${a})`;
  }
}

const FURTHEST = [
  'zero',
  'huge',
  'minus_huge',
  'slight',
  'most',
  'minus_most',
  'least',
  'minus_least',
  'past_whole',
];

/** Each function's own example, with one argument after the other at an extreme, then all of them. */
function* libraryFormulas(): Generator<string> {
  for (const { id, example } of catalogue) {
    if (example.given.some((value) => typeof value === 'object')) continue;
    const given = example.given.map((value) => String(value).toUpperCase());
    for (const name of FURTHEST) {
      for (const [i, value] of example.given.entries()) {
        if (typeof value === 'number') yield `=${id}(${given.with(i, name).join(';')})`;
      }
      const all = given.map((text, i) => (typeof example.given[i] === 'number' ? name : text));
      yield `=${id}(${all.join(';')})`;
    }
  }
}

const readable = (formulas: Iterable<string>): string[] =>
  [...formulas].filter((text) => !('why' in readFormula(text, (name) => name in CELLS)));

describe('at the extremes of numbers, what a formula hands on is finite or has a reason, in engine and replay alike', {
  timeout: 60_000,
}, () => {
  it('for every sign and function of the closed list', () => {
    const { tried, wrong } = bothWays(CELLS, new Map(), readable(standardFormulas()));
    expect(tried).toBeGreaterThan(8000);
    expect(wrong.length, wrong.slice(0, 20).join('\n')).toBe(0);
  });

  it('for every function of the library', () => {
    const { tried, wrong } = bothWays(CELLS, new Map(), readable(libraryFormulas()));
    expect(tried).toBeGreaterThan(2500);
    expect(wrong.length, wrong.slice(0, 20).join('\n')).toBe(0);
  });
});
