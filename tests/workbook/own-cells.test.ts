import { describe, expect, it } from 'vitest';
import { newPlan } from '../../src/plan/new-plan.ts';
import type { OwnCell, Plan } from '../../src/plan/plan.ts';
import type { Answer } from '../../src/workbook/engine.ts';
import { evaluation } from '../../src/workbook/evaluation.ts';
import { Workbook } from '../../src/workbook/workbook.ts';

const planWith = (formulas: Readonly<Record<string, string>>): Plan => ({
  ...newPlan('Own cells'),
  ownCells: Object.entries(formulas).map(
    ([name, formula]): OwnCell => ({ name, label: name, unit: 'mm', value: null, formula }),
  ),
});

/** What own cells answer on the case to start from. */
function answersOf<Name extends string>(formulas: Readonly<Record<Name, string>>): Record<Name, Answer> {
  const book = new Workbook(planWith(formulas), null);
  const answers = Object.keys(formulas).map((name) => [name, book.answer(name)] as const);
  book.destroy();
  return Object.fromEntries(answers) as Record<Name, Answer>;
}

describe('own cells', { timeout: 30_000 }, () => {
  it('may use inputs, results, one another and the room of any graded limit', () => {
    const it = answersOf({
      twice: '=2 * shim_stack',
      more: '=twice + shim_thickness',
      gap_left: '=rudder_gap_room',
      stack_left: '=shim_stack_room',
      bearing_left: '=bearing_gap_room',
      lean_left: '=shaft_lean_room',
      worst: '=MIN(rudder_gap_room; shim_stack_room; drive_headroom_room)',
    });
    expect(it.twice.value).toBe(96);
    expect(it.more.value).toBe(108);
    // 56.8860 less 50; 75 less 48; the nearer of 110 − 60 and 220 − 110; 1 − |0|.
    expect(it.gap_left.value).toBeCloseTo(6.886, 4);
    expect(it.stack_left.value).toBe(27);
    expect(it.bearing_left.value).toBeCloseTo(50, 9);
    expect(it.lean_left.value).toBe(1);
    expect(it.worst.value).toBeCloseTo(6.886, 4);
  });

  it('get the same room as the limit board', () => {
    const names = new Workbook(newPlan('x'), null).judgement().limits.filter((limit) => limit.graded);
    const rooms = Object.fromEntries(names.map(({ name }) => [`left_of_${name}`, `=${name}_room`]));
    const plan = planWith(rooms);
    const book = new Workbook(plan, null);
    for (const { name, verdict } of book.judgement().limits.filter((limit) => limit.graded)) {
      const answer = book.answer(`left_of_${name}`);
      if (verdict.room === undefined) {
        expect(answer.value).toBeNull();
        expect(answer.why).toContain('does not apply here');
      } else expect(answer.value).toBeCloseTo(verdict.room, 9);
    }
    book.destroy();
  });

  it('have no room of a yes/no limit, which has none', () => {
    const it = answersOf({
      a: '=core_ready_room',
      b: '=rudder_immersion_room',
      c: '=strut_tubes_needed_room',
    });
    expect(it.a).toEqual({ value: null, why: 'There is no cell named core_ready_room.' });
    expect(it.b.value).toBeNull();
    expect(it.c.value).toBeNull();
  });

  it('have no room of a length that must exist and does not', () => {
    const plan = planWith({ left: '=port_strut_cut_room' });
    const book = new Workbook(plan, null);
    expect(book.answer('left' as string).value).toBeCloseTo(1000 - 205.1823, 4);
    book.show(plan, null, new Map([['strut_end_allowance', 200]]));
    expect(book.answer('port_strut_cut').value).toBeLessThan(0);
    expect(book.answer('left' as string)).toMatchObject({
      value: null,
      why: expect.stringContaining('not above 0'),
    });
    book.destroy();
  });

  it('name what is not known, and what cannot be called, in every cell that follows', () => {
    const it = answersOf({ lost: '=nowhere + 1', after: '=lost * 2', counted: '=COUNTIF(shim_stack; 48)' });
    expect(it.lost).toEqual({ value: null, why: 'There is no cell named nowhere.' });
    expect(it.after).toEqual({ value: null, why: 'There is no cell named nowhere.' });
    expect(it.counted).toEqual({ value: null, why: 'COUNTIF is not a function of this workbook.' });
  });

  it('say so when a cell they used is deleted, and answer again when it is back', () => {
    const before = planWith({ base: '=shim_stack', user: '=base + 1' });
    const book = new Workbook(before, null);
    expect(book.answer('user' as string).value).toBe(49);
    book.show({ ...before, ownCells: before.ownCells.filter((cell) => cell.name !== 'base') }, null);
    expect(book.answer('user' as string)).toEqual({ value: null, why: 'There is no cell named base.' });
    expect(book.answer('base' as string).value).toBeNull();
    book.show(before, null);
    expect(book.answer('user' as string).value).toBe(49);
    book.destroy();
  });

  it('may be judged by a limit of the owner’s, which never says inside without an answer', () => {
    const plan: Plan = {
      ...planWith({ clear: '=rudder_gap - 3', lost: '=nowhere' }),
      limits: [
        { name: 'clear_enough', result: 'clear', low: 40, near: 5 },
        { name: 'lost_enough', result: 'lost', low: 0, near: 5 },
      ],
    };
    const book = new Workbook(plan, null);
    const { limits, unanswered } = book.judgement();
    expect(limits.at(-2)).toMatchObject({ name: 'clear_enough', verdict: { state: 'inside' }, own: true });
    expect(limits.at(-1)).toMatchObject({
      verdict: { state: 'no answer' },
      why: 'There is no cell named nowhere.',
    });
    expect(unanswered).toBe(1);
    book.destroy();
  });

  it('have no answer where a remainder has none, nor do the cells and limits that follow from it', () => {
    const plan: Plan = {
      ...planWith({ rest: '=MOD(1e300; 1e-300)', after: '=rest * 0 + 1', beside: '=MOD(17; 5)' }),
      limits: [{ name: 'rest_kept', result: 'rest', low: 0, near: 5 }],
    };
    const book = new Workbook(plan, null);
    const none = { value: null, why: 'These numbers give no finite value.' };
    expect(book.answer('rest' as string)).toEqual(none);
    expect(book.answer('after' as string)).toEqual(none);
    expect(book.answer('beside' as string).value).toBe(2);
    const { limits, unanswered } = book.judgement();
    expect(limits.at(-1)).toMatchObject({ verdict: { state: 'no answer' }, why: none.why });
    expect(unanswered).toBe(1);
    book.destroy();
  });

  it('hand on the least and the greatest numbers as they are', () => {
    const it = answersOf({
      least: '=1e-160 * 1e-160',
      most: '=1.7976931348623157e308 * 1',
      after: '=least * 1e300',
    });
    expect(it.least.value).toBe(1e-160 * 1e-160);
    expect(it.most.value).toBe(Number.MAX_VALUE);
    expect(Number(it.after.value) * 1e20).toBeCloseTo(1, 4);
  });

  it('have a limit without an answer where no room can be worked out', () => {
    const plan: Plan = {
      ...planWith({ far: '=-1.7e308', word: '="wide" & ""' }),
      limits: [
        { name: 'far_enough', result: 'far', low: 1.7e308, near: 5 },
        { name: 'wide_enough', result: 'word', low: 1, near: 5 },
      ],
    };
    const book = new Workbook(plan, null);
    const [far, wide] = book.judgement().limits.slice(-2);
    expect(far).toMatchObject({ verdict: { state: 'no answer' }, why: expect.stringContaining('far apart') });
    expect(wide).toMatchObject({ verdict: { state: 'no answer' }, why: expect.stringContaining('“wide”') });
    expect(evaluation(book, plan).reasons).toMatchObject({
      word: 'word gives a text, “wide”, and no number.',
    });
    book.destroy();
  });

  it('end a text at 4,096 characters, and what follows from a longer one has its reason', () => {
    const doubling = Object.fromEntries(
      Array.from({ length: 60 }, (_, i) => [`t_${i}`, i === 0 ? '="x" & ""' : `=t_${i - 1} & t_${i - 1}`]),
    );
    const it: Record<string, Answer> = answersOf({ ...doubling, after: '=IF(t_59 = "x"; 1; 2)' });
    expect(String(it.t_12?.value)).toHaveLength(4096);
    const why = 'A cell’s text may have 4096 characters at most; this one would have 8192.';
    for (const name of ['t_13', 't_59', 'after']) expect(it[name]).toEqual({ value: null, why });
  });

  it('take a true minus sign for a minus', () => {
    const it = answersOf({
      less: '=shim_stack − 8',
      turned: '=−shim_stack',
      small: '=1e−2',
      said: '="a−b" & ""',
    });
    expect(it.less.value).toBe(40);
    expect(it.turned.value).toBe(-48);
    expect(it.small.value).toBe(0.01);
    expect(it.said.value).toBe('a−b');
  });

  it('give a reason in words for what cannot be computed', () => {
    const it = answersOf({
      divided: '=1 / (shim_stack - 48)',
      worded: '=transom_build * 2',
      rooted: '=SQRT(0 - shim_stack)',
      broken: '=1 2',
      opened: '=IF(TRUE; 1',
    });
    for (const { value, why } of Object.values(it)) {
      expect(value).toBeNull();
      expect(why).toMatch(/^[A-Z].*\.$/);
    }
    expect(it.divided.why).toBe('Something is divided by 0.');
    expect(it.opened.why).toBe('A bracket is opened and never closed.');
  });
});

describe('the engine’s ways', () => {
  it('compares words whole: no wildcards, no patterns', () => {
    const plan = planWith({
      star: '=transom_build = "co*"',
      dot: '=transom_build = "c.*"',
      whole: '=transom_build = "cored"',
    });
    const book = new Workbook(plan, null);
    book.show(plan, null, new Map([['transom_build', 'cored']]));
    expect(book.answer('star' as string).value).toBe(false);
    expect(book.answer('dot' as string).value).toBe(false);
    expect(book.answer('whole' as string).value).toBe(true);
    book.destroy();
  });

  it('counts 0.1 + 0.2 as 0.3, gives at least 14 figures, and takes a minus before a power first, as OpenFormula has it', () => {
    const it = answersOf({
      same: '=0.1 + 0.2 = 0.3',
      third: '=1 / 3',
      power: '=-2 ^ 2',
      flag: '=TRUE',
      big: '=1E3 + 1e3',
    });
    expect(it.same.value).toBe(true);
    expect(it.third.value).toBeCloseTo(1 / 3, 14);
    expect(it.power.value).toBe(4);
    expect(it.flag.value).toBe(true);
    expect(it.big.value).toBe(2000);
  });
});
