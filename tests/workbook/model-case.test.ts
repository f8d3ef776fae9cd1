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

  it('has every limit inside but rudder_gap and rudder_gap_swung, which are near', () => {
    const { limits, unanswered } = answersOf();
    const without = ['rudder_gap_vertical', 'shaft_gap', 'drive_face_gap'];
    const single = ['single_strut_cut', 'single_strut_run', 'single_strut_rise', 'single_foot_edge'];
    const near = ['rudder_gap', 'rudder_gap_swung'];
    for (const { name, state } of limits) {
      if (near.includes(name)) expect([name, state]).toEqual([name, 'near']);
      // Nothing has been listed that holes, flanges or what turns above could come near.
      else if ([...without, ...single, ...limitsOnRows].includes(name))
        expect([name, state]).toEqual([name, 'does not apply']);
      else expect([name, state]).toEqual([name, 'inside']);
    }
    expect(unanswered).toBe(0);
  });

  it('has its least room at the lower bolts: 1 − 0.8640', () => {
    const { least_room } = answersOf();
    expect(least_room?.name).toBe('bolt_utilisation');
    expect(least_room?.value).toBeCloseTo(1 - 0.86395, 4);
  });

  it('holds the gap from 4 shims on, and loses the bolts from 6', () => {
    const printed: readonly (readonly [string, number, number])[] = [
      ['rudder_gap', 3, 44.7009],
      ['rudder_gap', 4, 56.886],
      ['bolt_utilisation', 5, 0.9562],
      ['bolt_utilisation', 6, 1.0497],
    ];
    for (const [name, count, figure] of printed) {
      expect(
        Math.abs((answersOf({ shim_count: count }).results[name] as number) - figure),
      ).toBeLessThanOrEqual(1e-4);
    }
    for (let count = 0; count <= 6; count++) {
      const it = answersOf({ shim_count: count });
      expect(stateOf(it, 'rudder_gap') === 'outside').toBe(count < 4);
      expect(stateOf(it, 'bolt_utilisation') === 'outside').toBe(count >= 6);
    }
  });

  it('keeps too little free shaft with the upper bracket at 900, and enough at 890', () => {
    const at900 = answersOf({ upper_bracket_height: 900 });
    expect(at900.results.drive_headroom).toBeCloseTo(10, 9);
    expect(stateOf(at900, 'drive_headroom')).toBe('outside');
    const at890 = answersOf({ upper_bracket_height: 890 });
    expect(at890.results.drive_headroom).toBeCloseTo(20, 9);
    expect(stateOf(at890, 'drive_headroom')).toBe('inside');
  });

  it('has shaft_face_gap outside once the transom is raked aft so that the tube closes on its top edge', () => {
    const it = answersOf({ transom_rake: 20, single_foot_height: 700 });
    expect(it.results.shaft_face_gap).toBeLessThan(0);
    expect(stateOf(it, 'shaft_face_gap')).toBe('outside');
  });
});
