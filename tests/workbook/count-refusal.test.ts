import { HyperFormula } from 'hyperformula';
import { describe, expect, it } from 'vitest';
import { STANDARD_TAKES } from '../../src/plan/standard-words.ts';
import { readFormula } from '../../src/workbook/formula.ts';

const refusalOf = (text: string): string | undefined => {
  const it = readFormula(text, () => false);
  return 'why' in it ? it.why : undefined;
};

describe('how many values a function takes', () => {
  it('is said by name, with what was given and what is allowed', () => {
    expect(refusalOf('=SUM()')).toBe('SUM takes at least 1 value in its brackets; here it has none.');
    expect(refusalOf('=2 * sin(1; 2)')).toBe('SIN takes 1 value in its brackets; here it has 2.');
    expect(refusalOf('=PI(1)')).toBe('PI takes no value in its brackets; here it has 1.');
    expect(refusalOf('=ROUND(1; 2; 3)')).toBe('ROUND takes 1 or 2 values in its brackets; here it has 3.');
    expect(refusalOf('=MAX((1 + 2) * 3; MIN(4; 5); 6)')).toBeUndefined();
  });

  it('is what the formula engine takes', () => {
    const engine = HyperFormula.buildEmpty({ licenseKey: 'gpl-v3', functionArgSeparator: ';' });
    for (const word of Object.keys(STANDARD_TAKES)) {
      for (let n = 0; n <= 4; n++) {
        const call = `=${word}(${Array(n).fill('1').join(';')})`;
        const value = engine.calculateFormula(call, engine.getSheetId(engine.addSheet()) ?? 0);
        const miscounted =
          typeof value === 'object' && value !== null && 'message' in value
            ? /number of arguments/i.test(String(value.message))
            : false;
        expect(refusalOf(call) !== undefined, call).toBe(miscounted);
      }
    }
    engine.destroy();
  });
});
