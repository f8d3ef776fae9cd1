import { setReading } from '../../src/plan/edit/reading.ts';
import { type Plan, readingOf } from '../../src/plan/plan.ts';
import { Workbook } from '../../src/workbook/workbook.ts';
import { demoPlan } from '../studies/plan-points.ts';
import { type Times, timesOf } from './numbers.ts';

const ROUNDS = 600;
const WARM_UP = 200;

/** Inputs edited in turn, as an owner does: a choice, a reading that moves most of the workbook, a gear value. */
const EDITS: readonly (readonly [name: string, values: readonly number[]])[] = [
  ['shim_count', [3, 4, 5]],
  ['transom_rake', [-10, -9.5, -9]],
  ['upper_bracket_height', [800, 850, 900]],
  ['boat_speed', [8.75, 8, 7]],
];

function edited(plan: Plan, name: string, value: number): Plan {
  const reading = readingOf(plan, name);
  if (reading === undefined) throw new Error(`There is no input named ${name}.`);
  const made = setReading(plan, name, { ...reading, value });
  if (!made.ok) throw new Error(made.why);
  return made.plan;
}

/** One edit of the demo plan to all results and limits, ms. */
export function engineEdit(): Times {
  const plan = demoPlan();
  const workbook = new Workbook(plan);
  const times: number[] = [];
  for (let i = 0; i < WARM_UP + ROUNDS; i++) {
    const [name, values] = EDITS[i % EDITS.length] ?? ['', []];
    const next = edited(plan, name, values[Math.floor(i / EDITS.length) % values.length] ?? 0);
    const start = performance.now();
    workbook.show(next, next.active);
    workbook.judgement();
    if (i >= WARM_UP) times.push(performance.now() - start);
  }
  return timesOf(times);
}
