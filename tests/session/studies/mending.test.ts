import { expect, it } from 'vitest';
import { mendingRanges, remedyAsk } from '../../../src/session/remedy-ask.ts';
import { benchOf } from '../../../src/session/studies/bench-of.ts';
import { ReplayEvaluators } from '../../../src/session/studies/evaluators.ts';
import { mending } from '../../../src/session/studies/mending.ts';
import type { StudyBench } from '../../../src/session/studies/study-bench.ts';
import { finish } from '../../../src/studies/study.ts';
import { Workbook } from '../../../src/workbook/workbook.ts';
import { demoPlan } from '../../studies/plan-points.ts';

it('remedies come by the engine at first and by the replay from then on, the same to the last digit', () => {
  const plan = demoPlan();
  const workbook = new Workbook(plan, 'Three shims');
  const bench = benchOf(workbook, new ReplayEvaluators(workbook), plan);
  const scenario = 'Three shims';
  const callFor = (limit: string) => {
    workbook.show(plan, scenario);
    const value = (name: string) => workbook.answer(name).value;
    const asked = remedyAsk({ limit, plan, uses: workbook.uses(), value, stepOf: (cell) => cell.step ?? 1 });
    return { scenario, over: mendingRanges(plan, value), ...asked };
  };
  const first = mending(bench, callFor('rudder_gap'));
  let early: unknown;
  let step = first.next();
  while (step.done !== true) {
    early = step.value.soFar ?? early;
    step = first.next();
  }
  expect(step.value.remedies.length).toBeGreaterThan(1);
  // The answer is told before the proof that follows it.
  expect(early).toBe(step.value);

  const noEngine: StudyBench = {
    ...bench,
    evaluatorOf: () => {
      throw new Error('The engine was asked.');
    },
  };
  expect(finish(mending(noEngine, callFor('rudder_gap')))).toEqual(step.value);
  // One proof serves every limit.
  const bolts = finish(mending(noEngine, callFor('bolt_utilisation')));
  expect(bolts.limit.name).toBe('bolt_utilisation');
});
