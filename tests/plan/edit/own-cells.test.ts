import { describe, expect, it } from 'vitest';
import {
  deleteOwnCell,
  keepScenario,
  renameOwnCell,
  setOwnCell,
  setOwnLimit,
  setReading,
} from '../../../src/plan/edit.ts';
import { newPlan } from '../../../src/plan/new-plan.ts';
import type { OwnCell, Plan } from '../../../src/plan/plan.ts';
import { Workbook } from '../../../src/workbook/workbook.ts';
import { planFrom, whyFrom } from './edits.ts';

const base = newPlan('Boat');
const cell = (name: string, more: Partial<OwnCell> = {}): OwnCell => ({
  name,
  label: '',
  unit: 'mm',
  value: null,
  ...more,
});
const withCells = (...cells: OwnCell[]): Plan =>
  cells.reduce((plan, it) => planFrom(setOwnCell(plan, it)), base);

describe('an own cell', () => {
  it('is added at the end, and put in place of the one with its name', () => {
    const plan = withCells(cell('one', { value: 1 }), cell('two', { value: 2 }), cell('one', { value: 3 }));
    expect(plan.ownCells.map((it) => [it.name, it.value])).toEqual([
      ['one', 3],
      ['two', 2],
    ]);
  });

  it.each([
    ['standoff', 'already'],
    ['transom_rake', 'already'],
    ['rudder_gap_room', 'already'],
    ['x1', 'reads like a column and a row'],
    ['r2c3', 'reads like a column and a row'],
    ['sum', 'formulas already use that word'],
    ['pi', 'formulas already use that word'],
    ['true', 'formulas already use that word'],
    ['room_above', 'formulas already use that word'],
    ['Two', 'small letters'],
    ['a b', 'small letters'],
    ['', 'small letters'],
    ['__proto__', 'small letters'],
    ['a'.repeat(65), 'small letters'],
  ])('cannot be called %s', (name, why) => {
    expect(whyFrom(setOwnCell(base, cell(name)))).toContain(why);
    expect(whyFrom(renameOwnCell(withCells(cell('one')), 'one', name))).toContain(why);
  });

  it('holds a number, a formula or nothing', () => {
    expect(whyFrom(setOwnCell(base, cell('one', { value: Number.NaN })))).toContain('a number or nothing');
    expect(whyFrom(setOwnCell(base, cell('one', { formula: '1' })))).toContain('starts with =');
    expect(whyFrom(setOwnCell(base, cell('one', { label: 'x'.repeat(65) })))).toContain('65 characters');
    expect(whyFrom(setOwnCell(base, cell('one', { note: '\u2066' })))).toContain('U+2066');
  });

  it('is taken away only when nothing uses it', () => {
    const plan = withCells(cell('one', { value: 1 }), cell('two', { formula: '=one + 1' }));
    const limited = planFrom(setOwnLimit(plan, { name: 'least', result: 'one', low: 0, near: 0 }));
    const followed = planFrom(
      setReading(limited, 'shim_thickness', { value: null, formula: '=ONE * 3', origin: 'choice' }),
    );
    expect(whyFrom(deleteOwnCell(followed, 'one'))).toBe(
      'one is used by shim_thickness, two, the limit least: change that first.',
    );
    expect(planFrom(deleteOwnCell(plan, 'two')).ownCells).toHaveLength(1);
    expect(whyFrom(deleteOwnCell(plan, 'six'))).toBe('There is no own cell named six.');
  });
});

describe('a rename', () => {
  const start = planFrom(
    setReading(
      planFrom(
        keepScenario(
          planFrom(
            setReading(
              withCells(
                cell('one', { value: 10 }),
                cell('two', { formula: '=one+one_more+"one"&One' }),
                cell('one_more', { value: 2 }),
              ),
              'vane_rudder_drop',
              {
                value: null,
                formula: '=MAX(one; 2) * one',
                typed: '=MAX(one; 2) * one',
                origin: 'manual',
              },
            ),
          ),
          'A',
        ),
      ),
      'shim_thickness',
      { value: null, formula: '= one', origin: 'choice' },
    ),
  );
  const limited = planFrom(setOwnLimit(start, { name: 'one', result: 'one', low: 5, near: 1 }));
  const renamed = planFrom(renameOwnCell(limited, 'one', 'width'));

  it('reaches every formula and limit, and no text, longer name or other thing', () => {
    expect(renamed.ownCells.map((it) => [it.name, it.formula])).toEqual([
      ['width', undefined],
      ['two', '=width+one_more+"one"&width'],
      ['one_more', undefined],
    ]);
    expect(renamed.inputs.get('vane_rudder_drop')).toMatchObject({
      formula: '=MAX(width; 2) * width',
      typed: '=MAX(width; 2) * width',
    });
    expect(renamed.scenarios[0]?.overrides.get('shim_thickness')?.formula).toBe('= width');
    expect(renamed.limits).toEqual([{ name: 'one', result: 'width', low: 5, near: 1 }]);
    expect(renamed.inputs.get('tube_od')).toBe(limited.inputs.get('tube_od'));
  });

  it('changes no answer', () => {
    const before = new Workbook(limited);
    const after = new Workbook(renamed);
    for (const name of ['vane_rudder_drop', 'shim_thickness', 'standoff', 'side_force', 'rudder_gap']) {
      expect(after.answer(name)).toEqual(before.answer(name));
    }
    expect(after.answer('width' as string).value).toBe(10);
    expect(after.answer('vane_rudder_drop').value).toBe(100);
  });

  it('is refused for a name that is taken or not there', () => {
    expect(whyFrom(renameOwnCell(start, 'one', 'two'))).toContain('already');
    expect(whyFrom(renameOwnCell(start, 'six', 'seven'))).toBe('There is no own cell named six.');
    expect(planFrom(renameOwnCell(start, 'one', 'one'))).toBe(start);
  });

  it('is refused where a formula would grow past what a file holds', () => {
    const long = withCells(cell('one'), cell('two', { formula: `=${'one+'.repeat(1000)}1` }));
    expect(whyFrom(renameOwnCell(long, 'one', 'n'.repeat(30)))).toContain('longer than 4096');
  });
});
