import type { Limit } from '../../src/drawings/limits.ts';
import type { Values } from '../../src/drawings/values.ts';
import { inputs as inputCells, inputNamed, results } from '../../src/plan/book.ts';
import type { CellName } from '../../src/plan/names.ts';
import { newPlan } from '../../src/plan/new-plan.ts';
import { judgeAll } from '../../src/workbook/judged.ts';
import { Workbook } from '../../src/workbook/workbook.ts';
import { caseInputs } from '../workbook/model-case.ts';

type Given = Readonly<Record<string, number | boolean | null>>;

const isDrawn = (value: unknown): value is number | boolean =>
  typeof value === 'number' || typeof value === 'boolean';

/** The numbers and yes/nos of the case to start from, and of the inputs beyond it. */
export const inputs: Readonly<Record<string, number | boolean>> = Object.fromEntries(
  inputCells.flatMap(({ name, value }) => {
    const starts = caseInputs[name] ?? value;
    return isDrawn(starts) ? [[name, starts] as const] : [];
  }),
);

const plan = newPlan('The case, drawn');
const book = new Workbook(plan, null);

/** Every input and result of the case, with what a test changes in it; an answer may be taken away by null. */
export function withResults(overrides: Given = {}): Record<string, number | boolean | null> {
  const given = Object.entries({ ...inputs, ...overrides }).filter(
    ([name]) => inputNamed(name) !== undefined,
  );
  book.show(plan, null, new Map(given));
  const answers = results.map(({ name }) => {
    const { value } = book.answer(name);
    return [name, isDrawn(value) ? value : null] as const;
  });
  return { ...inputs, ...Object.fromEntries(answers), ...overrides };
}

export const valuesFrom = (record: Given): Values => ({
  number: (name) => {
    const value = record[name];
    return typeof value === 'number' ? value : null;
  },
  flag: (name) => {
    const value = record[name];
    return typeof value === 'boolean' ? value : null;
  },
});

/** The case, with what a test changes in it. */
export const caseValues = (overrides: Given = {}): Values => valuesFrom(withResults(overrides));

/** The limits as they stand on the values. */
export const judge = (values: Values): Limit[] =>
  judgeAll((name) => ({
    value: values.number(name as CellName) ?? values.flag(name as CellName),
  })).limits.map(({ name, value, low, high, verdict }) => ({
    name,
    state: verdict.state,
    value: value ?? null,
    low: low ?? null,
    high: high ?? null,
  }));

/** Colour tokens of the page. */
export const screenPalette = {
  film: '#E8EEEC',
  sheet: '#FBFCFB',
  water: '#CFDEE4',
  'mark-wash': '#F3E2EB',
  ink: '#14252D',
  soft: '#40525B',
  edge: '#66777E',
  mark: '#8C1A5B',
} as const;
