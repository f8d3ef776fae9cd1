import type { Ask } from '../../src/order/ask.ts';
import { newPlan } from '../../src/plan/new-plan.ts';
import { Workbook } from '../../src/workbook/workbook.ts';
import { caseInputs, type Inputs } from '../workbook/model-case.ts';

const plan = newPlan('The case to start from');

/** The answers of the case to start from, with changes. */
export function caseAsk(changes: Inputs = {}): Ask {
  const book = new Workbook(plan, null);
  book.show(plan, null, new Map(Object.entries({ ...caseInputs, ...changes })));
  return (name) => book.answer(name).value;
}
