import { describe, expect, it } from 'vitest';
import { catalogue } from '../../src/calc/catalogue.ts';
import { cellNamed, results } from '../../src/plan/book.ts';

const functions = new Map(catalogue.map((it) => [it.id, it]));

/** What stands between a call's brackets, argument by argument, and where the call ends. */
function argumentsAt(formula: string, from: number): { given: string[]; end: number } {
  const given = [''];
  let depth = 0;
  for (let i = from; i < formula.length; i++) {
    const sign = formula[i] as string;
    if (sign === ')' && depth === 0) return { given: given.map((it) => it.trim()), end: i + 1 };
    if (sign === ';' && depth === 0) given.push('');
    else given[given.length - 1] += sign;
    if (sign === '(') depth++;
    if (sign === ')') depth--;
  }
  throw new Error(`${formula} does not end.`);
}

describe('units', () => {
  it('of a cell that a formula hands to the library are those its argument has, and so is what comes back', () => {
    const wrong: string[] = [];
    let looked = 0;
    for (const { name, unit, formula } of results) {
      for (const call of formula.matchAll(/\b([A-Z][A-Z0-9_]+)\(/g)) {
        const called = functions.get(call[1] as string);
        if (called === undefined) continue;
        const { given, end } = argumentsAt(formula, call.index + call[0].length);
        given.forEach((text, i) => {
          const cell = cellNamed(text);
          if (cell === undefined) return;
          looked++;
          const wanted = called.arguments[i]?.unit;
          if (cell.unit !== wanted)
            wrong.push(`${name}: ${called.id} takes ${text} in ${wanted}, not ${cell.unit}`);
        });
        if (call.index === 1 && end === formula.length && unit !== called.unit)
          wrong.push(`${name} is in ${unit}, ${called.id} gives ${called.unit}`);
      }
    }
    expect(wrong).toEqual([]);
    expect(looked).toBeGreaterThan(500);
  });
});
