import { describe, expect, it } from 'vitest';
import { inputNamed } from '../../src/plan/book.ts';
import { newPlan } from '../../src/plan/new-plan.ts';
import type { Value } from '../../src/plan/plan.ts';
import { unusedWords } from '../../src/session/unused.ts';
import { Workbook } from '../../src/workbook/workbook.ts';

const given =
  (values: Readonly<Record<string, Value>>) =>
  (name: string): Value =>
    values[name] ?? inputNamed(name)?.value ?? null;

describe('inputs that do not count', () => {
  it('are the feet of the other bracket', () => {
    expect(unusedWords('single_foot_y', given({ strut_count: 2 }))).toBe('counts with one strut');
    expect(unusedWords('single_foot_y', given({ strut_count: 1 }))).toBeUndefined();
    expect(unusedWords('port_foot_y', given({ strut_count: 1 }))).toBe('counts with two struts');
    expect(unusedWords('port_foot_y', given({ strut_count: 2 }))).toBeUndefined();
  });

  it('are a wedge under a hinge, and the core of a transom without one', () => {
    expect(unusedWords('wedge_edge', given({ lower_flange_hinged: true }))).toBe('counts without a hinge');
    expect(unusedWords('wedge_edge', given({ lower_flange_hinged: false }))).toBeUndefined();
    expect(unusedWords('inner_skin', given({ transom_build: 'solid' }))).toBeDefined();
    expect(unusedWords('inner_skin', given({ transom_build: 'cored', core_removed: false }))).toBeUndefined();
    expect(unusedWords('inner_skin', given({ transom_build: 'cored', core_removed: true }))).toBeDefined();
  });

  it('are none of those that always count', () => {
    expect(unusedWords('shim_count', given({}))).toBeUndefined();
  });

  it('change no result while they do not count', () => {
    const plan = newPlan('Unused');
    const workbook = new Workbook(plan);
    const judged = new Set(
      workbook
        .judgement()
        .limits.filter((it) => it.verdict.state !== 'does not apply')
        .map((it) => it.result),
    );
    for (const name of [
      'single_foot_y',
      'single_foot_height',
      'single_strut_od',
      'wedge_edge',
      'inner_skin',
    ]) {
      expect(unusedWords(name, (it) => workbook.answer(it).value)).toBeDefined();
      const before = new Map([...judged].map((result) => [result, workbook.answer(result).value]));
      const value = plan.inputs.get(name)?.value;
      workbook.show(plan, null, new Map([[name, Number(value) + 7]]));
      for (const result of judged)
        expect([name, result, workbook.answer(result).value]).toEqual([name, result, before.get(result)]);
      workbook.show(plan, null);
    }
    workbook.destroy();
  });
});
