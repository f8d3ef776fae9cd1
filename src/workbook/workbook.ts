import type { Known } from '../plan/known.ts';
import type { Plan } from '../plan/plan.ts';
import { figureNamed } from '../plan/table-figures.ts';
import { contentsOf, labelOf } from './contents.ts';
import { type Answer, type Content, Engine } from './engine.ts';
import { type Judgement, judgeAll } from './judged.ts';
import { type LimitRule, limitRules } from './limit-rule.ts';
import { loopFrom, loopSentence, uses } from './loops.ts';
import { type Proved, prove, type VariedRange } from './replay/prove.ts';
import type { Replay } from './replay/replay.ts';
import { type Replayed, replayOf } from './replay/replay-of.ts';
import { tableContents, withFigures } from './table-sheet.ts';

/** The names a change reached. */
export type Changed = ReadonlySet<string>;

/**
 * A plan's cells, computed. `show` moves the whole workbook to a plan and scenario by setting what differs, so undo, a
 * switch of scenario and one stepper press all take the same road and cost what changed.
 */
export class Workbook {
  readonly #engine: Engine;
  #plan: Plan;
  /** Undefined while something else than the plan's own contents is shown. */
  #scenario: string | null | undefined;
  #contents: ReadonlyMap<string, Content>;
  #uses: Map<string, readonly string[]> | undefined;
  /** The proof whose points stand in the inputs, until something is shown again. */
  #proving: object | undefined;

  constructor(plan: Plan, scenario: string | null = plan.active) {
    this.#plan = plan;
    this.#scenario = scenario;
    this.#contents = contentsOf(plan, scenario);
    this.#engine = new Engine(this.#contents, labelOf, tableContents(plan));
  }

  /** Shows a plan in a scenario; `overrides`, of cells and of tables' figures, go over both. Gives back the names whose answers changed. */
  show(plan: Plan, scenario: string | null, overrides?: ReadonlyMap<string, Content>): Changed {
    const asItIs = overrides === undefined || overrides.size === 0;
    const isShown = plan === this.#plan && scenario === this.#scenario && this.#proving === undefined;
    if (asItIs && isShown) return new Set();
    this.#proving = undefined;
    const contents = contentsOf(plan, scenario);
    const figures: [string, Content][] = [];
    for (const [name, content] of overrides ?? []) {
      if (figureNamed(name) === undefined) contents.set(name, content);
      else figures.push([name, content]);
    }
    const gone = [...this.#contents.keys()].filter((name) => !contents.has(name));
    this.#uses = undefined;
    const changed = this.#engine.set(contents);
    const moved = this.#engine.setTables(withFigures(tableContents(plan), figures));
    const removed = gone.length === 0 ? [] : this.#engine.remove(gone);
    this.#plan = plan;
    this.#scenario = asItIs ? scenario : undefined;
    this.#contents = contents;
    return new Set([...changed, ...moved, ...removed]);
  }

  /** The value of any cell, or why there is none. */
  answer<N extends string>(name: N & Known<N>): Answer {
    const answer = this.#engine.answer(name);
    if (answer.value !== null || answer.why !== 'The cell follows from itself.') return answer;
    const loop = loopFrom(name, this.uses());
    return loop === undefined ? answer : { value: null, why: loopSentence(loop) };
  }

  /** All limits as they stand. */
  judgement(): Judgement {
    return judgeAll((name) => this.answer(name), this.#plan.limits, this.#plan.ownCells);
  }

  /** Which names each formula cell uses. */
  uses(): ReadonlyMap<string, readonly string[]> {
    this.#uses ??= uses(this.#contents);
    return this.#uses;
  }

  content<N extends string>(name: N & Known<N>): Content | undefined {
    return this.#contents.get(name);
  }

  /** Whether a table of the plan has a figure of that name. */
  hasFigure(name: string): boolean {
    const figure = figureNamed(name);
    return figure !== undefined && tableContents(this.#plan).get(figure.table)?.[figure.row] !== undefined;
  }

  get names(): readonly string[] {
    return [...this.#contents.keys()];
  }

  /** Every limit of the plan: the workbook's, then the owner's own. */
  limitRules(): readonly LimitRule[] {
    return limitRules(this.#plan.limits, this.#plan.ownCells);
  }

  /** The cells as plain steps, for many points; `varied` inputs are put in. Or why they cannot be had so. */
  replay(varied: readonly string[], results: readonly string[], limits: readonly LimitRule[]): Replayed {
    return replayOf(this.#engine, varied, { results, limits });
  }

  /**
   * Whether a replay gives what the engine gives over these ranges, point by point. Between two points anything else may
   * be shown, which has to be done before any cell is looked at; the proof takes up where it was.
   */
  *prove(
    plan: Plan,
    scenario: string | null,
    replay: Replay,
    ranges: readonly VariedRange[],
  ): Generator<void, Proved, void> {
    const own = {};
    const steps = prove(this.#engine, replay, ranges);
    for (;;) {
      if (this.#proving !== own) {
        this.show(plan, scenario);
        this.#proving = own;
      }
      const step = steps.next();
      if (step.done === true) {
        this.show(plan, scenario);
        return step.value;
      }
      yield;
    }
  }

  /** A workbook of its own over the same plan, or another, for what must not disturb this one. */
  another(plan = this.#plan): Workbook {
    return new Workbook(plan);
  }

  destroy(): void {
    this.#engine.destroy();
  }
}
