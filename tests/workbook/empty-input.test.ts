import { describe, expect, it } from 'vitest';
import { inputs } from '../../src/plan/book.ts';
import { newPlan } from '../../src/plan/new-plan.ts';
import type { Plan } from '../../src/plan/plan.ts';
import { tableNamed } from '../../src/plan/tables.ts';
import type { Judgement } from '../../src/workbook/judged.ts';
import { Workbook } from '../../src/workbook/workbook.ts';
import { caseInputs, type Inputs } from './model-case.ts';

const plan = newPlan('Empty');

/** Rows of the survey, between which every input that only they use is used. */
const surveyed: Plan = {
  ...plan,
  tables: (
    [
      ['transom_readings', [0, 480], [450, 560], [850, 630]],
      ['rudder_readings', [-150, 440], [-1100, 420]],
      ['keep_outs_outside', [-350, -300, 400, 500]],
      ['keep_outs_inside', [300, 350, 600, 700]],
      ['obstacles', [300, 100, 1500, 2400, 15]],
    ] as const
  ).map(([name, ...rows]) => ({
    name,
    columns: tableNamed(name)?.columns.map((it) => it.name) ?? [],
    rows,
  })),
};

/** Plans between which every input is used: struts two or one, transom solid or cored, drive unit beside the transom. */
const grounds: readonly (readonly [Plan, Inputs])[] = [
  [plan, caseInputs],
  [
    plan,
    { ...caseInputs, strut_count: 1, transom_build: 'cored', shaft_length: 900, lower_flange_hinged: false },
  ],
  [surveyed, caseInputs],
];

describe('an input left empty', () => {
  // A workbook for each ground: going from one to the other changes most cells.
  const books = grounds.map(([shown]) => new Workbook(shown, null));
  const book = books[0] as Workbook;
  const judge = (n: number, empty?: string): Judgement => {
    const [shown, ground] = grounds[n] as (typeof grounds)[number];
    const contents = new Map<string, number | boolean | string | null>(Object.entries(ground));
    if (empty !== undefined) contents.set(empty, null);
    books[n]?.show(shown, null, contents);
    return (books[n] as Workbook).judgement();
  };
  const full = grounds.map((_, n) => judge(n));

  it.each(inputs.map((cell) => [cell.name, cell.label]))(
    '%s: says “%s is empty.” and nothing passes for it',
    (name, label) => {
      const told = new Set<string>();
      for (const [n, of] of books.entries()) {
        const wanting = judge(n, name);
        expect(of.answer(name)).toEqual({ value: null, why: `${label} is empty.` });
        // A limit either stands as it did, resting on other inputs, or has no answer: emptiness never helps or harms.
        const odd = wanting.limits.filter(({ verdict: { state }, why }, i) => {
          if (why !== undefined) told.add(why);
          return state === 'no answer'
            ? why?.endsWith('.') !== true
            : state !== full[n]?.limits[i]?.verdict.state;
        });
        expect(odd).toEqual([]);
        expect(wanting.unanswered).toBe(
          wanting.limits.filter((limit) => limit.verdict.state === 'no answer').length,
        );
        for (const cell of of.names) told.add(cell === name ? '' : (of.answer(cell).why ?? ''));
      }
      expect(told).toContain(`${label} is empty.`);
    },
  );

  it('takes with it every result that rests on it, and no other', () => {
    judge(0, 'tube_wall');
    const graph = book.uses();
    const rests = (cell: string): boolean =>
      (graph.get(cell) ?? []).some((it) => it === 'tube_wall' || rests(it));
    const without = book.names.filter((cell) => book.answer(cell).value === null);
    expect(without).toContain('tube_utilisation');
    expect(without).not.toContain('strut_utilisation');
    for (const cell of book.names.filter(rests)) expect(without).toContain(cell);
  });

  it('leaves its limit unanswered when it is the bound', () => {
    const { limits, unanswered } = judge(0, 'spacing_min');
    const limit = limits.find((it) => it.name === 'bracket_spacing');
    expect(limit?.value).toBeCloseTo(550, 9);
    expect(limit?.verdict).toEqual({ state: 'no answer', room: undefined, ratio: undefined });
    expect(limit?.why).toContain('is empty.');
    expect(unanswered).toBe(1);
  });

  it('leaves all unanswered when nothing is filled in, and nothing inside', () => {
    const empty = new Map(inputs.map((cell) => [cell.name, null]));
    book.show(surveyed, null, empty);
    const { limits, leastRoom, unanswered } = book.judgement();
    for (const limit of limits) expect([limit.name, limit.verdict.state]).toEqual([limit.name, 'no answer']);
    expect(unanswered).toBe(limits.length);
    expect(leastRoom).toBeUndefined();
    book.show(plan, null, empty);
    const states = new Set(book.judgement().limits.map((it) => it.verdict.state));
    expect([...states].sort()).toEqual(['does not apply', 'no answer']);
    for (const it of books) it.destroy();
  });
});
