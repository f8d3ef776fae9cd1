import type { Plan } from '../../plan/plan.ts';
import type { Workbook } from '../../workbook/workbook.ts';
import { deciding } from '../remedy-ask.ts';
import { evaluatorOver } from '../study-evaluator.ts';
import type { ReplayEvaluators } from './evaluators.ts';
import type { StudyBench } from './study-bench.ts';

/** What the studies of a plan are worked out with, over a workbook that nothing else looks at. */
export const benchOf = (workbook: Workbook, evaluators: ReplayEvaluators, plan: Plan): StudyBench => ({
  evaluatorOf: (scenario) => evaluatorOver(workbook, plan, scenario),
  oneAtATime: (scenario, ask, ranges) => evaluators.oneAtATime(plan, scenario, ask, ranges),
  points: evaluators.of(plan),
  decides: (scenario) => {
    workbook.show(plan, scenario);
    const uses = workbook.uses();
    return new Map(workbook.limitRules().map(({ name }) => [name, deciding(name, plan, uses)]));
  },
  isProved: (scenario, ask, ranges) => evaluators.isProved(plan, scenario, ask, ranges),
});
