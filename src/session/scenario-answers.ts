import type { Plan } from '../plan/plan.ts';
import type { Answer } from '../workbook/engine.ts';
import type { Judgement, LimitAnswer } from '../workbook/judged.ts';
import type { Workbook } from '../workbook/workbook.ts';
import { blankAnswers } from './blank-answers.ts';

/** What one scenario of a plan comes to. */
export interface ScenarioAnswer {
  readonly limits: ReadonlyMap<string, LimitAnswer>;
  readonly unanswered: number;
  /** The value of any cell, as it was when the scenario was worked out. */
  readonly answer: (name: string) => Answer | undefined;
}

/** The base values go by null. */
export type ByScenario = ReadonlyMap<string | null, ScenarioAnswer>;

/** Runs a piece of work when the page has nothing better to do; gives back what calls it off. */
export type Later = (work: () => void) => () => void;

/** Works out one scenario; it may keep what it needs to do so again. */
type Bench = Pick<Workbook, 'show' | 'answer' | 'judgement' | 'names' | 'destroy'>;

const columnsOf = (plan: Plan): readonly (string | null)[] => [null, ...plan.scenarios.map((it) => it.name)];

const answerOf = (
  answers: ReadonlyMap<string, Answer>,
  { limits, unanswered }: Judgement,
): ScenarioAnswer => ({
  limits: new Map(limits.map((it) => [it.name, it])),
  unanswered,
  answer: (name) => answers.get(name),
});

const taken = (bench: Bench): ScenarioAnswer =>
  answerOf(new Map(bench.names.map((name) => [name, bench.answer(name)])), bench.judgement());

/**
 * Answers of every scenario of a plan, each from a workbook of its own, one at a time and never while the page paints.
 * Until a scenario is worked out anew its former answers stay.
 */
export class ScenarioAnswers {
  readonly #make: (plan: Plan, scenario: string | null) => Bench;
  readonly #later: Later;
  readonly #benches = new Map<string | null, Bench>();
  readonly #listeners = new Set<() => void>();
  #answers: ByScenario = new Map();
  #waiting: (string | null)[] = [];
  #plan: Plan | undefined;
  #callOff: (() => void) | undefined;

  constructor(make: (plan: Plan, scenario: string | null) => Bench, later: Later) {
    this.#make = make;
    this.#later = later;
  }

  readonly subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };

  get answers(): ByScenario {
    return this.#answers;
  }

  /** How many scenarios still wait to be worked out. */
  get waiting(): number {
    return this.#waiting.length;
  }

  /** Works out every scenario of a plan, the one being looked at first. */
  show(plan: Plan): void {
    if (plan === this.#plan) return;
    this.#plan = plan;
    const columns = columnsOf(plan);
    for (const [scenario, bench] of this.#benches) {
      if (columns.includes(scenario)) continue;
      bench.destroy();
      this.#benches.delete(scenario);
    }
    this.#answers = new Map([...this.#answers].filter(([scenario]) => columns.includes(scenario)));
    this.#waiting = [plan.active, ...columns.filter((it) => it !== plan.active)];
    this.#goOn();
    this.#tell();
  }

  stop(): void {
    this.#callOff?.();
    this.#callOff = undefined;
    this.#waiting = [];
    this.#plan = undefined;
    for (const bench of this.#benches.values()) bench.destroy();
    this.#benches.clear();
  }

  #goOn(): void {
    if (this.#callOff !== undefined || this.#waiting.length === 0) return;
    this.#callOff = this.#later(() => {
      this.#callOff = undefined;
      this.#workOutNext();
      this.#goOn();
    });
  }

  #workOutNext(): void {
    const plan = this.#plan;
    const scenario = this.#waiting.shift();
    if (plan === undefined || scenario === undefined) return;
    this.#answers = new Map(this.#answers).set(scenario, this.#workedOut(plan, scenario));
    this.#tell();
  }

  /** What a scenario comes to; no numbers at all, rather than former ones, where that fails. */
  #workedOut(plan: Plan, scenario: string | null): ScenarioAnswer {
    try {
      const bench = this.#benches.get(scenario) ?? this.#make(plan, scenario);
      this.#benches.set(scenario, bench);
      bench.show(plan, scenario);
      return taken(bench);
    } catch (error) {
      // A workbook that failed may hold anything.
      this.#benches.delete(scenario);
      const why = `It could not be worked out: ${error instanceof Error ? error.message : String(error)}`;
      const { answers, judgement } = blankAnswers(plan, scenario, why);
      return answerOf(answers, judgement);
    }
  }

  #tell(): void {
    for (const listener of [...this.#listeners]) listener();
  }
}
