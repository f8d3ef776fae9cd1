import { isDeepStrictEqual } from 'node:util';
import fc from 'fast-check';
import { STATES } from '../../../src/calc/limits/states.ts';
import { inputs, limitCells, results } from '../../../src/plan/book.ts';
import { newPlan } from '../../../src/plan/new-plan.ts';
import type { OwnCell, OwnLimit, Plan, Reading, Value } from '../../../src/plan/plan.ts';
import { contentsOf, labelOf } from '../../../src/workbook/contents.ts';
import { Engine } from '../../../src/workbook/engine.ts';
import { type Judgement, judgeRules } from '../../../src/workbook/judged.ts';
import { limitRules } from '../../../src/workbook/limit-rule.ts';
import type { Column } from '../../../src/workbook/replay/replay.ts';
import { replayOf } from '../../../src/workbook/replay/replay-of.ts';
import type { Inputs } from '../model-case.ts';
import { randomInputs } from '../random-inputs.ts';
import { randomFormula } from './random-formula.ts';
import { isSame, unroundedIn } from './unrounded.ts';

const OWN = 20;
const POINTS = 3;

const OWN_NAMES = Array.from({ length: OWN }, (_, i) => `own_${i}_cell`);

const knownNames = [
  ...inputs.map(({ name }) => name),
  ...results.map(({ name }) => name),
  ...limitCells.filter(({ graded }) => graded !== false).map(({ name }) => `${name}_room`),
];

export interface Case {
  readonly base: Inputs;
  /** Whether the survey's tables have rows. */
  readonly measured: boolean;
  readonly empty: readonly string[];
  readonly followed: readonly (readonly [name: string, formula: string])[];
  readonly formulas: readonly string[];
  readonly points: readonly Inputs[];
  readonly varied: readonly string[];
}

/** Rows as the engine takes them: the last figure of each is what it may be off. */
const MEASURED = new Map([
  [
    'transom_readings',
    [
      [0, 510, 3],
      [250, 560, 2],
      [500, 600, 3],
      [800, 660, 5],
    ],
  ],
  [
    'rudder_readings',
    [
      [-200, 470, 3],
      [-1100, 450, 3],
    ],
  ],
  ['keep_outs_outside', [[-300, -200, 600, 900, 3]]],
  ['obstacles', [[-200, 50, 900, 9000, 5, 10]]],
]);

const numbersOnly = inputs.filter(({ type }) => type === 'number').map(({ name }) => name);

export const cases: fc.Arbitrary<Case> = fc.record({
  base: randomInputs,
  measured: fc.boolean(),
  empty: fc.oneof(
    { weight: 4, arbitrary: fc.constant([]) },
    { weight: 1, arbitrary: fc.subarray(numbersOnly, { maxLength: 3 }) },
  ),
  followed: fc.array(fc.tuple(fc.constantFrom(...numbersOnly), randomFormula(knownNames)), { maxLength: 1 }),
  // Each may use those before it, and now and then one after it, which may close a loop.
  formulas: fc
    .tuple(
      ...OWN_NAMES.map((_, i) => {
        const before = OWN_NAMES.slice(0, i);
        return fc.oneof(
          { weight: 12, arbitrary: randomFormula([...knownNames, ...before, ...before, ...before]) },
          { weight: 1, arbitrary: randomFormula([...knownNames.slice(0, 20), ...OWN_NAMES]) },
        );
      }),
    )
    .map((texts) => [...texts]),
  points: fc.array(randomInputs, { minLength: POINTS, maxLength: POINTS }),
  varied: fc.oneof(
    fc.constant(inputs.map(({ name }) => name)),
    fc.subarray(
      inputs.map(({ name }) => name),
      { minLength: 1, maxLength: 12 },
    ),
  ),
});

function planOf({ base, empty, followed, formulas }: Case): Plan {
  const plan = newPlan('Random');
  const readings = new Map<string, Reading>(plan.inputs);
  const put = (name: string, change: Partial<Reading>): void => {
    const before = readings.get(name);
    if (before !== undefined) readings.set(name, { ...before, ...change });
  };
  for (const [name, value] of Object.entries(base)) put(name, { value });
  for (const name of empty) put(name, { value: null });
  for (const [name, formula] of followed) put(name, { value: null, formula });
  const ownCells = formulas.map(
    (formula, i): OwnCell => ({ name: OWN_NAMES[i] ?? '', label: '', unit: '–', value: null, formula }),
  );
  const limits: OwnLimit[] = [
    { name: 'own_low', result: OWN_NAMES[0] ?? '', low: 10, near: 5 },
    { name: 'own_both', result: OWN_NAMES[1] ?? '', low: -100, high: 100, near: 5 },
  ];
  return { ...plan, inputs: readings, ownCells, limits };
}

/** How many cells one case compares. */
export const CELLS = (results.length + OWN) * POINTS;

const told = (value: unknown): string => JSON.stringify(value);

const same = (what: string, there: unknown, here: unknown): void => {
  if (isDeepStrictEqual(there, here)) return;
  throw new Error(`${what}: ${told(there)} by the engine, ${told(here)} by the replay`);
};

/** Of a limit that does not apply the state alone: the replay leaves out cells that only such limits look at. */
const whereApplying = ({ limits, ...rest }: Judgement) => ({
  ...rest,
  limits: limits.map((it) =>
    it.verdict.state === 'does not apply' ? { name: it.name, verdict: it.verdict } : it,
  ),
});

/**
 * Compares a plan's every answer at every point with the engine's, to the last bit, and every limit. Throws what differs;
 * gives back how many were compared, and how many of them are errors.
 */
export function compare(drawn: Case): { cells: number; errors: number } {
  const plan = planOf(drawn);
  const engine = new Engine(contentsOf(plan, null), labelOf, drawn.measured ? MEASURED : new Map());
  const names = [...results.map(({ name }) => name), ...OWN_NAMES];
  const limits = limitRules(plan.limits);
  const made = replayOf(engine, drawn.varied, { results: names, limits });
  if (!made.ok) throw new Error(made.why);
  const { replay } = made;
  let errors = 0;
  const pointOf = (at: Inputs): Map<string, Value> =>
    new Map(drawn.varied.map((name) => [name, at[name] ?? null] as const));
  const points = drawn.points.map(pointOf);
  const columns = drawn.varied.map((name) => points.map((point) => point.get(name)) as unknown as Column);
  const batch = replay.evaluateMany(columns, points.length);
  points.forEach((point, i) => {
    engine.set(point);
    for (const [k, name] of names.entries()) {
      const there = unroundedIn(engine, name);
      const here = replay.unrounded(name, i);
      if (!isSame(there, here))
        throw new Error(`${name}: ${told(there)} by the engine, ${told(here)} by the replay`);
      const answer = engine.answer(name);
      same(name, answer, replay.answer(name, i));
      if (answer.why !== undefined) errors++;
      const number =
        answer.value === null || typeof answer.value === 'string' ? Number.NaN : Number(answer.value);
      same(`${name} in its column`, number, batch.results[k]?.[i]);
    }
    const judgement = judgeRules((name) => engine.answer(name), limits);
    same('The judgement', whereApplying(judgement), whereApplying(replay.judgement(i)));
    judgement.limits.forEach(({ name, verdict }, k) => {
      const columnsOf = batch.limits[k];
      same(`${name}, its state`, verdict.state, STATES[columnsOf?.state[i] ?? -1]);
      same(`${name}, its room`, verdict.room ?? Number.NaN, columnsOf?.room[i]);
      same(`${name}, its room ratio`, verdict.ratio ?? Number.NaN, columnsOf?.ratio[i]);
    });
  });
  engine.destroy();
  return { cells: names.length * points.length, errors };
}
