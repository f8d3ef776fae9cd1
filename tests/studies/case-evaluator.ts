import { newPlan } from '../../src/plan/new-plan.ts';
import type { Plan } from '../../src/plan/plan.ts';
import { evaluatorOver } from '../../src/session/study-evaluator.ts';
import type { Evaluator } from '../../src/studies/evaluator.ts';
import { Workbook } from '../../src/workbook/workbook.ts';

/** The model's case to start from, with a few inputs otherwise. */
export function casePlan(values: Readonly<Record<string, number | boolean>> = {}): Plan {
  const plan = newPlan('The case');
  const inputs = new Map(plan.inputs);
  for (const [name, value] of Object.entries(values)) {
    const reading = inputs.get(name);
    if (reading === undefined) throw new Error(`There is no input named ${name}.`);
    inputs.set(name, { ...reading, value });
  }
  return { ...plan, inputs };
}

/** Studies of a plan through the workbook itself. */
export function caseEvaluator(plan: Plan): { readonly evaluator: Evaluator; readonly workbook: Workbook } {
  const workbook = new Workbook(plan, null);
  return { workbook, evaluator: evaluatorOver(workbook, plan, null) };
}
