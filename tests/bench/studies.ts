import { type Plan, readingOf } from '../../src/plan/plan.ts';
import { ReplayEvaluators } from '../../src/session/studies/evaluators.ts';
import { usuallyFreed } from '../../src/session/studies/free-choices.ts';
import { proposalsAsk } from '../../src/session/studies/proposals-ask.ts';
import { type MapAsk, map } from '../../src/studies/map/map.ts';
import { proposals } from '../../src/studies/proposals/proposals.ts';
import { finish } from '../../src/studies/study.ts';
import { Workbook } from '../../src/workbook/workbook.ts';

const ROUNDS = 7;

const median = (times: readonly number[]): number =>
  times.toSorted((a, b) => a - b)[times.length >> 1] as number;

const tenths = (ms: number): number => Math.round(ms * 10) / 10;

/** How long a piece of work takes, ms; the first round, which warms up, does not count. */
function timed(work: () => void): number {
  const times: number[] = [];
  for (let round = 0; round <= ROUNDS; round++) {
    const start = performance.now();
    work();
    if (round > 0) times.push(performance.now() - start);
  }
  return tenths(median(times));
}

/** The map of 100 × 100 points with all limits, and the search for proposals: to its first answer and to its end. */
export function studyTimes(plan: Plan) {
  const workbook = new Workbook(plan);
  const evaluators = new ReplayEvaluators(workbook).of(plan);
  const value = (name: string) => readingOf(plan, name)?.value ?? null;
  const side = (input: string, low: number, high: number) => {
    return { input, low, high, present: Number(value(input)), whole: false, grain: 1 };
  };
  const square: MapAsk = {
    scenario: plan.active,
    x: side('lower_bracket_height', 50, 600),
    y: side('upper_bracket_height', 400, 1200),
    results: ['rudder_gap'],
    fineness: 100,
  };
  const ask = proposalsAsk({
    plan,
    scenario: plan.active,
    free: usuallyFreed(value('strut_count')),
    value,
    uses: workbook.uses(),
    stepOf: (cell) => cell.step ?? 1,
  });
  const first = (): void => {
    for (const { soFar } of proposals(evaluators, ask)) if (soFar !== undefined) return;
  };
  return {
    map_100x100_ms: timed(() => finish(map(evaluators, square))),
    proposals_first_ms: timed(first),
    proposals_done_ms: timed(() => finish(proposals(evaluators, ask))),
  };
}
