import { describe, expect, it } from 'vitest';
import { newPlan } from '../../src/plan/new-plan.ts';
import type { Plan } from '../../src/plan/plan.ts';
import { Workbook } from '../../src/workbook/workbook.ts';

const plan = newPlan('Loops');
const withFormulas = (formulas: Readonly<Record<string, string>>): Plan => ({
  ...plan,
  inputs: new Map(
    [...plan.inputs].map(([name, reading]) => {
      const formula = formulas[name];
      return [name, formula === undefined ? reading : { ...reading, value: null, formula }];
    }),
  ),
  ownCells: Object.entries(formulas)
    .filter(([name]) => !plan.inputs.has(name))
    .map(([name, formula]) => ({ name, label: name, unit: 'mm', value: null, formula })),
});

describe('a loop', () => {
  it('is named in each of its cells, and in those that follow from it', () => {
    const book = new Workbook(
      withFormulas({ first: '=second + 1', second: '=third', third: '=first', after: '=third' }),
      null,
    );
    for (const name of ['first', 'second', 'third', 'after']) {
      const { value, why } = book.answer(name);
      expect(value).toBeNull();
      for (const link of ['first uses second', 'second uses third', 'third uses first'])
        expect(why).toContain(link);
    }
    book.destroy();
  });

  it('of many cells names eight of them and counts the others', () => {
    const names = Array.from({ length: 1500 }, (_, i) => `link_${i}`);
    const formulas = Object.fromEntries(names.map((name, i) => [name, `=${names.at(i - 1)} + 1`]));
    const started = performance.now();
    const book = new Workbook(withFormulas(formulas), null);
    const why = book.answer(names[0] ?? '').why ?? '';
    for (const name of names) expect(book.answer(name).value).toBeNull();
    expect(performance.now() - started).toBeLessThan(20_000);
    expect(why).toContain('link_0 uses link_1499');
    expect(why.match(/ uses /g)).toHaveLength(8);
    expect(why).toMatch(/, and 1492 more\.$/);
    book.destroy();
  });

  it('of one cell says that it uses itself', () => {
    const book = new Workbook(withFormulas({ itself: '=itself + 1' }), null);
    expect(book.answer('itself' as string)).toEqual({
      value: null,
      why: 'itself uses itself, so it has no answer.',
    });
    book.destroy();
  });

  it('through an input takes the answer of what rests on it, and of nothing else', () => {
    const book = new Workbook(withFormulas({ shim_count: '=shim_stack / shim_thickness' }), null);
    expect(book.answer('shim_stack').why).toContain('shim_stack uses shim_count');
    const { limits } = book.judgement();
    const stateOf = (name: string) => limits.find((limit) => limit.name === name)?.verdict.state;
    expect(stateOf('shim_stack')).toBe('no answer');
    expect(stateOf('rudder_gap')).toBe('no answer');
    expect(stateOf('bearing_gap')).toBe('inside');
    expect(stateOf('flange_yaw')).toBe('inside');
    book.destroy();
  });

  it('ends when one of its cells is given a value again', () => {
    const looped = withFormulas({ shim_count: '=shim_stack / shim_thickness' });
    const book = new Workbook(looped, null);
    expect(book.answer('rudder_gap').value).toBeNull();
    book.show(plan, null);
    expect(book.answer('rudder_gap').value).toBeCloseTo(56.886, 4);
    book.destroy();
  });
});
