import { describe, expect, it } from 'vitest';
import { newPlan } from '../../src/plan/new-plan.ts';
import type { OwnCell, Plan } from '../../src/plan/plan.ts';
import { readFormula } from '../../src/workbook/formula.ts';
import { Workbook } from '../../src/workbook/workbook.ts';

const why = (text: string): string | undefined => {
  const it = readFormula(text, () => false);
  return 'why' in it ? it.why : undefined;
};

describe('a table in a formula', () => {
  it('stands, by itself, where a function takes a table', () => {
    expect(why('=ROWS_GIVEN(transom_readings)')).toBeUndefined();
    expect(why('=1 + SUSPICIOUS_ROWS( TRANSOM_READINGS ; 3 )')).toBeUndefined();
    expect(
      why('=TRANSOM_FACE_SLOPE(250; 0; FACE_PROFILE(TRUE; transom_readings; 0; 500; 0; 0))'),
    ).toBeUndefined();
  });

  it.each([
    '=transom_readings',
    '=2 * transom_readings',
    '=SUM(transom_readings)',
    '=ROWS_GIVEN(transom_readings + 1)',
    '=ROWS_GIVEN((transom_readings))',
    '=SUSPICIOUS_ROWS(transom_readings; obstacles)',
    '=IF(TRUE; ROWS_GIVEN(transom_readings); obstacles)',
  ])('is refused in %s', (text) => expect(why(text)).toContain('is a table: it can only stand'));

  it.each([
    '=FACE_PROFILE(TRUE; transom_readings; 0; 500; 0; 0)',
    '=SUM(FACE_PROFILE(TRUE; transom_readings; 0; 500; 0; 0))',
    '=TRANSOM_FACE_SLOPE(250; 0; FACE_PROFILE(TRUE; transom_readings; 0; 500; 0; 0) + 1)',
  ])('is refused when a function gives it, in %s', (text) =>
    expect(why(text)).toContain('FACE_PROFILE is a table'),
  );

  it('is only given where it is needed', () => {
    const plan = withCells({ it: '=ROWS_GIVEN(5)' });
    expect(new Workbook(plan, null).answer('it' as string).why).toBe(
      'The table is one value; ROWS_GIVEN needs a table.',
    );
  });
});

const withCells = (formulas: Readonly<Record<string, string>>): Plan => ({
  ...newPlan('Tables'),
  ownCells: Object.entries(formulas).map(
    ([name, formula]): OwnCell => ({ name, label: name, unit: 'mm', value: null, formula }),
  ),
});

const withRows = (plan: Plan, rows: readonly (readonly (number | null)[])[]): Plan => ({
  ...plan,
  tables: [{ name: 'transom_readings', columns: ['height', 'distance'], rows }],
});

describe('the rows of a table', () => {
  const plan = withCells({
    count: '=ROWS_GIVEN(transom_readings)',
    twice: '=2 * count',
    line: '=PLUMB_LINE_AFT(transom_readings; 0)',
  });

  it('reach what follows from them at once, and only that', () => {
    const book = new Workbook(plan, null);
    expect(book.answer('count' as string).value).toBe(0);
    expect(book.answer('line' as string).why).toBe('A line takes two rows or more; the table has 0 in use.');
    const three = withRows(plan, [
      [0, 500],
      [100, 490],
      [200, 480],
    ]);
    const changed = book.show(three, null);
    expect(changed.has('twice')).toBe(true);
    expect(changed.has('rudder_gap')).toBe(false);
    expect(book.answer('twice' as string).value).toBe(6);
    expect(book.answer('line' as string).value).toBeCloseTo(500, 9);
    // A row without one of its figures is not looked at.
    const mended = withRows(plan, [
      [0, 520],
      [100, null],
      [200, 480],
    ]);
    book.show(mended, null);
    expect(book.answer('count' as string).value).toBe(2);
    expect(book.answer('line' as string).value).toBeCloseTo(520, 9);
    book.show(plan, null);
    expect(book.answer('count' as string).value).toBe(0);
    book.destroy();
  });

  it('are there from the start, and in a workbook made beside it', () => {
    const book = new Workbook(withRows(plan, [[0, 500]]), null);
    expect(book.answer('count' as string).value).toBe(1);
    expect(book.another().answer('count' as string).value).toBe(1);
  });
});
