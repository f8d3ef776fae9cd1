import { describe, expect, it } from 'vitest';
import {
  addTableRows,
  type Edited,
  removeTableRow,
  setOwnCell,
  setTableRow,
  setTableRows,
  tableRows,
} from '../../../src/plan/edit.ts';
import { openPlan } from '../../../src/plan/file/open-plan.ts';
import { writePlan } from '../../../src/plan/file/write-plan.ts';
import { newPlan } from '../../../src/plan/new-plan.ts';
import type { Plan } from '../../../src/plan/plan.ts';
import { MOST_ROWS } from '../../../src/plan/tables.ts';

const done = (it: Edited): Plan => {
  if (!it.ok) throw new Error(it.why);
  return it.plan;
};
const why = (it: Edited): string => (it.ok ? '' : it.why);
const row = (...values: (number | null)[]) => ({ values, note: null });
const READINGS = 'transom_readings';
const plan = newPlan('Tables');

describe('rows of a survey table', () => {
  const two = done(addTableRows(plan, READINGS, [row(0, 500), row(100, 480)]));

  it('are added, changed and taken away', () => {
    const changed = done(setTableRow(two, READINGS, 1, row(100, null)));
    expect(tableRows(changed, READINGS).map((it) => it.values)).toEqual([
      [0, 500],
      [100, null],
    ]);
    expect(tableRows(done(removeTableRow(changed, READINGS, 0)), READINGS)).toEqual([row(100, null)]);
    expect(two.tables[0]?.notes).toBeUndefined();
  });

  it('leave no trace when the last is gone', () => {
    expect(done(setTableRows(two, READINGS, [])).tables).toEqual([]);
  });

  it('keep what is noted beside them, through the file and back', () => {
    const note = { label: 'at the step', offBy: 2, who: 'mate', when: '2026-05-09', with: 'tape' };
    const noted = done(setTableRow(two, READINGS, 0, { values: [0, 500], note }));
    const opened = openPlan(writePlan(noted));
    expect(opened.ok && opened.plan.tables).toEqual(noted.tables);
  });

  it('are refused past the bounds, past the most, and where there are none', () => {
    expect(why(addTableRows(plan, READINGS, [row(0, -1)]))).toBe(
      'Line to face in row 1 of “Plumb line to the transom” cannot be -1 mm: it must be at least 0 mm and at most 5000 mm.',
    );
    const many = Array.from({ length: MOST_ROWS + 1 }, (_, i) => row(i, 1));
    expect(why(setTableRows(plan, READINGS, many))).toContain('takes 60 rows at most');
    expect(why(setTableRow(two, READINGS, 5, row(1, 1)))).toContain('has no row 6');
    expect(why(setTableRows(plan, 'profile', []))).toContain('no survey table');
    expect(why(addTableRows(plan, READINGS, [row(1, 2, 3)]))).toContain('has 2 figures; 3 were given');
    expect(why(addTableRows(plan, READINGS, [row(Number.NaN, 2)]))).toContain('numbers or nothing');
    const note = { who: 'a\u202eb' };
    expect(why(setTableRow(two, READINGS, 0, { values: [0, 500], note }))).toContain('Who read row 1');
  });

  it('have names that nothing else can have', () => {
    const cell = { name: READINGS, label: 'mine', unit: 'mm', value: 1 };
    expect(why(setOwnCell(plan, cell))).toContain('already');
  });
});

describe('a file with survey tables', () => {
  const text = writePlan(done(addTableRows(plan, READINGS, [row(0, 500), row(100, 480)])));

  it.each([
    ['another column', '"distance"', '"reach"', 'they must be height, distance'],
    ['a figure out of bounds', '480', '-3', 'cannot be -3 mm'],
    [
      'a name twice',
      '"tables": [',
      `"tables": [{ "name": "${READINGS}", "columns": ["height", "distance"], "rows": [] },`,
      'already',
    ],
  ])('is not opened with %s', (_, from, to, told) => {
    const opened = openPlan(text.replace(from, to));
    expect(opened.ok ? '' : opened.why).toContain(told);
  });
});
