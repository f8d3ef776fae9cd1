import type { Plan } from '../../plan/plan.ts';
import type { Evaluator } from '../../studies/evaluator.ts';
import type { Evaluators, PointRange, PointsAsk, RoadEvaluator } from '../../studies/points.ts';
import type { Study } from '../../studies/study.ts';
import type { LimitRule } from '../../workbook/limit-rule.ts';
import { PROOF_POINTS, type Proved } from '../../workbook/replay/prove.ts';
import type { Replay } from '../../workbook/replay/replay.ts';
import type { Workbook } from '../../workbook/workbook.ts';
import { evaluatorOver } from '../study-evaluator.ts';
import { enginePoints } from './engine-points.ts';
import { replayOneAtATime } from './one-at-a-time.ts';
import { replayPoints } from './replay-points.ts';

/** Proofs of earlier studies, by what they were about; a handful of plans fit. */
const MOST_PROOFS = 64;

/**
 * All that a proof is about: the formulas, what kind of value the other cells hold, what is varied over which ranges,
 * and what is asked. A number that changes needs no new proof, for it is put in as any other.
 */
const proofKey = (workbook: Workbook, ask: PointsAsk, ranges: readonly PointRange[]): string => {
  const cells = workbook.names.map((name) => {
    const content = workbook.content(name) ?? null;
    return content === null ? '0' : typeof content === 'object' ? content.formula : typeof content;
  });
  return JSON.stringify([cells, ask.inputs, ask.results, ask.limits ?? null, ranges]);
};

function rulesOf(workbook: Workbook, limits: readonly string[] | undefined): readonly LimitRule[] {
  const all = workbook.limitRules();
  if (limits === undefined) return all;
  return limits.map((name) => {
    const rule = all.find((it) => it.name === name);
    if (rule === undefined) throw new RangeError(`There is no limit named ${name}.`);
    return rule;
  });
}

function checkNames(workbook: Workbook, { inputs, results }: PointsAsk): void {
  const known = new Set(workbook.names);
  const unknown = [...inputs, ...results].find((name) => !known.has(name) && !workbook.hasFigure(name));
  if (unknown !== undefined) throw new RangeError(`There is no cell named ${unknown}.`);
}

/** What a study's points are worked out with. */
type Ready =
  | { readonly limits: readonly LimitRule[]; readonly replay: Replay; readonly why?: undefined }
  | { readonly limits: readonly LimitRule[]; readonly why: string; readonly replay?: undefined };

/** Makes evaluators for the studies of a plan, over a workbook that nothing else looks at. */
export class ReplayEvaluators {
  readonly #workbook: Workbook;
  readonly #proofs = new Map<string, Proved>();

  constructor(workbook: Workbook) {
    this.#workbook = workbook;
  }

  of(plan: Plan): Evaluators {
    return { points: (scenario, ask, ranges) => this.#points(plan, scenario, ask, ranges) };
  }

  /**
   * The same for studies that look at one point at a time. Only the results asked for can be looked at, and only the
   * inputs asked for can be varied.
   */
  *oneAtATime(
    plan: Plan,
    scenario: string | null,
    ask: PointsAsk,
    ranges: readonly PointRange[],
  ): Study<Evaluator> {
    const made = yield* this.#proved(plan, scenario, ask, ranges);
    return made.replay === undefined
      ? evaluatorOver(this.#workbook, plan, scenario)
      : replayOneAtATime(made.replay, plan, scenario);
  }

  /** Whether what is asked was proved before, so that evaluators are there at once. */
  isProved(plan: Plan, scenario: string | null, ask: PointsAsk, ranges: readonly PointRange[]): boolean {
    this.#workbook.show(plan, scenario);
    return this.#proofs.has(proofKey(this.#workbook, ask, ranges));
  }

  *#points(
    plan: Plan,
    scenario: string | null,
    ask: PointsAsk,
    ranges: readonly PointRange[],
  ): Study<RoadEvaluator> {
    const workbook = this.#workbook;
    const { replay, limits, why } = yield* this.#proved(plan, scenario, ask, ranges);
    if (replay === undefined) {
      const names = limits.map((it) => it.name);
      return {
        ...enginePoints(workbook, plan, scenario, { ...ask, limits: names }),
        road: { by: 'engine', why },
      };
    }
    return { ...replayPoints(replay, (name) => workbook.answer(name).value), road: { by: 'replay' } };
  }

  /** Shows the plan and makes a replay that is equal to it over the ranges, or says why there is none. */
  *#proved(plan: Plan, scenario: string | null, ask: PointsAsk, ranges: readonly PointRange[]): Study<Ready> {
    const workbook = this.#workbook;
    workbook.show(plan, scenario);
    checkNames(workbook, ask);
    const limits = rulesOf(workbook, ask.limits);
    const replayed = workbook.replay(ask.inputs, ask.results, limits);
    if (!replayed.ok) return { limits, why: replayed.why };
    const { replay } = replayed;
    const proved = yield* this.#proof(proofKey(workbook, ask, ranges), () =>
      workbook.prove(plan, scenario, replay, ranges),
    );
    return proved.equal ? { limits, replay } : { limits, why: proved.why };
  }

  *#proof(key: string, make: () => Generator<void, Proved, void>): Study<Proved> {
    const known = this.#proofs.get(key);
    if (known !== undefined) return known;
    const proof = make();
    let done = 0;
    let step = proof.next();
    for (; step.done !== true; step = proof.next()) yield { done: ++done, of: PROOF_POINTS };
    const proved = step.value;
    const oldest = this.#proofs.size >= MOST_PROOFS ? this.#proofs.keys().next().value : undefined;
    if (oldest !== undefined) this.#proofs.delete(oldest);
    this.#proofs.set(key, proved);
    return proved;
  }
}
