import { inputs, results } from '../plan/book.ts';
import { type Plan, readingOf } from '../plan/plan.ts';
import type { Answer } from '../workbook/engine.ts';
import { type Judgement, judgeAll } from '../workbook/judged.ts';

/** What a plan comes to while nothing can be worked out. */
export interface Blank {
  readonly answers: Map<string, Answer>;
  readonly judgement: Judgement;
}

/** Readings as they stand, and no more: every other cell has no answer, for the reason given, nor has any limit on one. */
export function blankAnswers(plan: Plan, scenario: string | null, why: string): Blank {
  const none: Answer = { value: null, why };
  const answers = new Map<string, Answer>();
  for (const { name } of inputs) {
    const value = readingOf(plan, name, scenario)?.value ?? null;
    answers.set(name, value === null ? none : { value });
  }
  for (const { name } of results) answers.set(name, none);
  for (const { name, value } of plan.ownCells) answers.set(name, value === null ? none : { value });
  return { answers, judgement: judgeAll((name) => answers.get(name) ?? none, plan.limits) };
}
