import { newPlan } from '../../src/plan/new-plan.ts';
import { type OwnCell, type Plan, readingOf } from '../../src/plan/plan.ts';
import { benchOf } from '../../src/session/studies/bench-of.ts';
import { ReplayEvaluators } from '../../src/session/studies/evaluators.ts';
import { type StudyCall, start } from '../../src/session/studies/registry.ts';
import { finish } from '../../src/studies/study.ts';
import { Workbook } from '../../src/workbook/workbook.ts';
import { interleaved, type Task } from './interleaved.ts';

const COUNTS = [0, 100, 2000] as const;

const call: StudyCall<'sweep'> = {
  study: 'sweep',
  ask: {
    scenario: null,
    input: 'upper_bracket_height',
    results: ['drive_headroom', 'bolt_utilisation'],
    low: 500,
    high: 1100,
    whole: false,
    points: 61,
  },
};

/** Own cells that follow from what is swept, though nothing that is swept follows from them. */
const ownCells = (count: number): OwnCell[] =>
  Array.from({ length: count }, (_, i) => ({
    name: `own_${i}_x`,
    label: `Own ${i}`,
    unit: 'mm',
    value: null,
    formula: i % 10 === 0 ? `=drive_headroom + ${i}` : `=own_${i - 1}_x * 1.01 + standoff`,
  }));

/** A sweep of the plan as it stands, or after an edit each time, as when an owner turns a stepper beside the chart. */
function sweepOver(count: number, edits: boolean): Task {
  const plan: Plan = { ...newPlan('Growth'), ownCells: ownCells(count) };
  const reading = readingOf(plan, 'shim_count');
  if (reading === undefined) throw new Error('There is no input named shim_count.');
  const plans = (edits ? [3, 4] : [3]).map(
    (value): Plan => ({ ...plan, inputs: new Map(plan.inputs).set('shim_count', { ...reading, value }) }),
  );
  const workbook = new Workbook(plan, null);
  const evaluators = new ReplayEvaluators(workbook);
  let turn = 0;
  return {
    evaluations: 1,
    run: () => {
      const bench = benchOf(workbook, evaluators, plans[turn++ % plans.length] ?? plan);
      finish(start(bench, call));
    },
  };
}

/** The same sweep on plans with more and more own cells that do not matter to it, ms. */
export function growth(): Record<string, number> {
  const tasks = COUNTS.flatMap((count): (readonly [string, Task])[] => [
    [`sweep_with_${count}_own_cells_ms`, sweepOver(count, false)],
    [`edit_and_sweep_with_${count}_own_cells_ms`, sweepOver(count, true)],
  ]);
  const took = interleaved(Object.fromEntries(tasks));
  return Object.fromEntries(Object.entries(took).map(([name, us]) => [name, Number((us / 1000).toFixed(2))]));
}
