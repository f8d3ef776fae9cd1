import type { Plan } from '../plan/plan.ts';
import type { Evaluator, LimitSample, Sample } from '../studies/evaluator.ts';
import type { LimitAnswer } from '../workbook/judged.ts';
import { readOverrides } from '../workbook/overrides.ts';
import type { Workbook } from '../workbook/workbook.ts';

const sampleOf = ({ name, verdict, value, low, high }: LimitAnswer): LimitSample => ({
  name,
  state: verdict.state,
  room: verdict.room ?? null,
  ratio: verdict.ratio ?? null,
  value: value ?? null,
  low: low ?? null,
  high: high ?? null,
});

/** What inputs that cannot be give: no answer anywhere, and why. */
const refusedSample = (limits: readonly LimitAnswer[], why: string): Sample => ({
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
        value(name) {
          const { value } = workbook.answer(name);
          return typeof value === 'boolean' ? Number(value) : typeof value === 'number' ? value : null;
        },
      };
    },
  };
}
