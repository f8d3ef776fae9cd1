import type { Plan } from '../../plan/plan.ts';
import type { Evaluators, PointEvaluator, PointRange, PointsAsk, Road } from '../../studies/points.ts';
import type { LimitRule } from '../../workbook/limit-rule.ts';
import type { Proved } from '../../workbook/replay/prove.ts';
import type { Workbook } from '../../workbook/workbook.ts';
import { enginePoints } from './engine-points.ts';
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
  const unknown = [...inputs, ...results].find((name) => !known.has(name));
  if (unknown !== undefined) throw new RangeError(`There is no cell named ${unknown}.`);
}

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

  #points(
    plan: Plan,
    scenario: string | null,
    ask: PointsAsk,
    ranges: readonly PointRange[],
  ): PointEvaluator & { readonly road: Road } {
    const workbook = this.#workbook;
    workbook.show(plan, scenario);
    checkNames(workbook, ask);
    const limits = rulesOf(workbook, ask.limits);
    const replayed = workbook.replay(ask.inputs, ask.results, limits);
    const byEngine = (why: string) => {
      const names = limits.map((it) => it.name);
      return {
        ...enginePoints(workbook, plan, scenario, { ...ask, limits: names }),
        road: { by: 'engine', why } as const,
      };
    };
    if (!replayed.ok) return byEngine(replayed.why);
    const { replay } = replayed;
    const proved = this.#proof(proofKey(workbook, ask, ranges), () => workbook.prove(replay, ranges));
    if (!proved.equal) return byEngine(proved.why);
    const present = new Map(workbook.names.map((name) => [name, workbook.answer(name).value]));
    return { ...replayPoints(replay, (name) => present.get(name) ?? null), road: { by: 'replay' } };
  }

  #proof(key: string, make: () => Proved): Proved {
    const known = this.#proofs.get(key);
    if (known !== undefined) return known;
    const proved = make();
    const oldest = this.#proofs.size >= MOST_PROOFS ? this.#proofs.keys().next().value : undefined;
    if (oldest !== undefined) this.#proofs.delete(oldest);
    this.#proofs.set(key, proved);
    return proved;
  }
}
