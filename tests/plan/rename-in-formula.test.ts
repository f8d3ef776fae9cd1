import { describe, expect, it } from 'vitest';
import { formulaUses, renameInFormula } from '../../src/plan/rename-in-formula.ts';

describe('a name within a formula', () => {
  it.each([
    ['=a+b', '=width+b'],
    ['=A+aa+a_b+b_a', '=width+aa+a_b+b_a'],
    ['="a"&a&"say ""a"" a"', '="a"&width&"say ""a"" a"'],
    ['=a(1)+a (2)+a', '=a(1)+a (2)+width'],
    ['=1e5*a', '=1e5*width'],
    ['=2a', '=2width'],
    ['=a.b+a', '=a.b+width'],
    ['=-a%', '=-width%'],
    ['=1', '=1'],
  ])('%s becomes %s', (before, after) => {
    expect(renameInFormula(before, 'a', 'width')).toBe(after);
    expect(formulaUses(before, 'a')).toBe(before !== after);
  });

  it('is found in no time in the longest formula', () => {
    const start = performance.now();
    renameInFormula(`=${'"'.repeat(4095)}`, 'a', 'b');
    renameInFormula(`=${'a'.repeat(4095)}`, 'a', 'b');
    renameInFormula(`=${'1'.repeat(4095)}`, 'a', 'b');
    renameInFormula(`=a${' '.repeat(4094)}`, 'a', 'b');
    expect(performance.now() - start).toBeLessThan(500);
  });
});
