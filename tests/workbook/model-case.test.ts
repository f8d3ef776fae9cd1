import { afterAll, describe, expect, it } from 'vitest';
import { inputNamed } from '../../src/plan/book.ts';
import { newPlan } from '../../src/plan/new-plan.ts';
import { type Evaluation, evaluation } from '../../src/workbook/evaluation.ts';
import { Workbook } from '../../src/workbook/workbook.ts';
import { limitsOnRows } from './limits-on-rows.ts';
import { caseAnswers, caseInputs, type Inputs } from './model-case.ts';

const plan = newPlan('The case to start from');
const book = new Workbook(plan, null);
afterAll(() => book.destroy());

const answersOf = (changes: Inputs = {}): Evaluation => {
  book.show(plan, null, new Map(Object.entries({ ...caseInputs, ...changes })));
  return evaluation(book, plan);
};

const stateOf = (it: Evaluation, name: string): string | undefined =>
  it.limits.find((limit) => limit.name === name)?.state;

describe('the model’s case to start from', () => {
  it('is how the workbook starts', () => {
    const starts = Object.keys(caseInputs).map((name) => [name, inputNamed(name)?.value]);
    expect(Object.fromEntries(starts)).toEqual(caseInputs);
  });

  it.each(Object.entries(caseAnswers))('%s is %s', (name, printed) => {
    const { results } = answersOf();
    expect(results).toHaveProperty(name);
    const answer = results[name] ?? null;
    if (printed === null || answer === null) expect(answer).toBe(printed);
    else expect(Math.abs(answer - printed)).toBeLessThanOrEqual(1e-4);
  });

  it('has every limit inside but both rudder gaps and the lower bolts, which are near', () => {
    const { limits, unanswered } = answersOf();
    const without = ['rudder_gap_vertical', 'shaft_gap', 'drive_face_gap'];
    const single = ['single_strut_cut', 'single_strut_run', 'single_strut_rise', 'single_foot_edge'];
    const near = ['rudder_gap', 'rudder_gap_swung', 'bolt_utilisation'];
    for (const { name, state } of limits) {
      if (near.includes(name)) expect([name, state]).toEqual([name, 'near']);
      // Nothing has been listed that holes, flanges or what turns above could come near.
      else if ([...without, ...single, ...limitsOnRows].includes(name))
        expect([name, state]).toEqual([name, 'does not apply']);
      else expect([name, state]).toEqual([name, 'inside']);
    }
    expect(unanswered).toBe(0);
  });

  it('has its least room at the lower bolts: 1 − 0.9612', () => {
    const { least_room } = answersOf();
    expect(least_room?.name).toBe('bolt_utilisation');
    expect(least_room?.value).toBeCloseTo(1 - 0.9612, 4);
  });

  it('holds the gap from 4 shims on, and loses the bolts from 5 unless sleeves are fitted', () => {
    const printed: readonly (readonly [string, Inputs, number])[] = [
      ['rudder_gap', { shim_count: 3 }, 44.7009],
      ['rudder_gap', { shim_count: 4 }, 56.886],
      ['bolt_utilisation', { shim_count: 4 }, 0.9612],
      ['bolt_utilisation', { shim_count: 5 }, 1.0824],
      ['bolt_utilisation', { shim_count: 4, shim_sleeve: true }, 0.6934],
    ];
    for (const [name, changes, figure] of printed) {
      expect(Math.abs((answersOf(changes).results[name] as number) - figure)).toBeLessThanOrEqual(1e-4);
    }
    for (let count = 0; count <= 6; count++) {
      const it = answersOf({ shim_count: count });
      expect(stateOf(it, 'rudder_gap') === 'outside').toBe(count < 4);
      expect(stateOf(it, 'bolt_utilisation') === 'outside').toBe(count >= 5);
    }
  });

  it('keeps too little free shaft with the upper bracket at 900, and enough at 860', () => {
    const at900 = answersOf({ upper_bracket_height: 900 });
    expect(at900.results.drive_headroom).toBeCloseTo(-20, 9);
    expect(stateOf(at900, 'drive_headroom')).toBe('outside');
    const at860 = answersOf({ upper_bracket_height: 860 });
    expect(at860.results.drive_headroom).toBeCloseTo(20, 9);
    expect(stateOf(at860, 'drive_headroom')).toBe('inside');
  });

  it('has shaft_face_gap outside once the transom is raked aft so that the tube closes on its top edge', () => {
    const it = answersOf({ transom_rake: 20, single_foot_height: 700 });
    expect(it.results.shaft_face_gap).toBeLessThan(0);
    expect(stateOf(it, 'shaft_face_gap')).toBe('outside');
  });
});
