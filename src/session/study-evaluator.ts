import type { Plan } from '../plan/plan.ts';
import type { Evaluator, LimitSample, Sample } from '../studies/evaluator.ts';
import type { Answer } from '../workbook/engine.ts';
import type { LimitAnswer } from '../workbook/judged.ts';
import { readOverrides } from '../workbook/overrides.ts';
import type { Workbook } from '../workbook/workbook.ts';

export const sampleOf = ({ name, verdict, value, low, high }: LimitAnswer): LimitSample => ({
  name,
  state: verdict.state,
  room: verdict.room ?? null,
  ratio: verdict.ratio ?? null,
  value: value ?? null,
  low: low ?? null,
  high: high ?? null,
});

/** A value as a study takes it: yes as 1, no as 0, null for none and for a word. */
export const numberOf = ({ value }: Answer): number | null =>
  typeof value === 'boolean' ? Number(value) : typeof value === 'number' ? value : null;

/** What inputs that cannot be give: no answer anywhere, and why. */
export const refusedSample = (limits: readonly LimitAnswer[], why: string): Sample => ({
  value: () => null,
  limits: limits.map((it) => ({
    ...sampleOf(it),
    state: 'no answer',
    room: null,
    ratio: null,
    value: null,
  })),
  refused: why,
});

/** Answers a study's questions about a plan in one of its scenarios, from a workbook that nothing else looks at. */
export function evaluatorOver(workbook: Workbook, plan: Plan, scenario: string | null): Evaluator {
  return {
    evaluate(overrides) {
      const read = readOverrides(overrides, plan, scenario);
      if (!read.ok) {
        workbook.show(plan, scenario);
        return refusedSample(workbook.judgement().limits, read.why);
      }
      workbook.show(plan, scenario, read.contents);
      return {
        limits: workbook.judgement().limits.map(sampleOf),
        value: (name) => numberOf(workbook.answer(name)),
      };
    },
  };
}
