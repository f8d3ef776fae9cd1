import type { Plan } from '../../plan/plan.ts';
import type { Evaluator } from '../../studies/evaluator.ts';
import { readOverrides } from '../../workbook/overrides.ts';
import type { Replay } from '../../workbook/replay/replay.ts';
import { numberOf, refusedSample, sampleOf } from '../study-evaluator.ts';

/** Answers one set of inputs at a time by a replay that was proved equal to the engine. */
export function replayOneAtATime(replay: Replay, plan: Plan, scenario: string | null): Evaluator {
  return {
    evaluate(overrides) {
      const read = readOverrides(overrides, plan, scenario);
      if (!read.ok) {
        replay.evaluate(new Map());
        return refusedSample(replay.judgement().limits, read.why);
      }
      replay.evaluate(overrides);
      return {
        limits: replay.judgement().limits.map(sampleOf),
        value: (name) => numberOf(replay.answer(name)),
      };
    },
  };
}
