import type { Estimate } from '../../calc/uncertainty/interval.ts';
import { holdsFrom } from '../chance-words.ts';
import { slopes } from '../drivers/slopes.ts';
import { errorsAmong, type Varied } from '../drivers/varied.ts';
import { Meter } from '../meter.ts';
import { firstOrder } from '../odds/first-order.ts';
import { sampled } from '../odds/sampled.ts';
import type { Column, Evaluators, PointEvaluator, PointRange } from '../points.ts';
import type { Progress, Study } from '../study.ts';
import { errorModel } from '../uncertain/error-model.ts';
import { furthest } from '../uncertain/reading-error.ts';
import { inputsOf, type ProposalsAsk, type Readings } from './ask.ts';

/** Draws for a mount that is shown. */
const REPEATS = 16;
const POINTS = 256;

/** How likely mounts are to keep every limit, by how far the readings and the mount itself may be off. */
export class MountOdds {
  readonly #readings: Readings;
  readonly #moving: readonly string[];
  readonly #evaluator: PointEvaluator;
  readonly #errors: readonly Varied[];
  readonly #seed: number;

  private constructor(
    evaluator: PointEvaluator,
    ask: ProposalsAsk,
    readings: Readings,
    errors: readonly Varied[],
  ) {
    this.#evaluator = evaluator;
    this.#readings = readings;
    this.#errors = errors;
    this.#moving = inputsOf(ask);
    this.#seed = ask.seed;
  }

  /**
   * Gets an evaluator for it, over the ranges of what a mount moves and what readings may be off. Undefined where only
   * the engine could answer, which would take minutes.
   */
  static *over(
    evaluators: Evaluators,
    ask: ProposalsAsk,
    readings: Readings,
    ranges: readonly PointRange[],
  ): Study<MountOdds | undefined> {
    const names = new Set(errorsAmong(readings.varied).map((it) => it.name));
    const errors = readings.varied.filter((it) => names.has(it.name));
    const around = errors.map((it): PointRange => {
      const moved = ranges.find((range) => range.name === it.name);
      const [low, high] =
        moved !== undefined && 'low' in moved ? [moved.low, moved.high] : [it.value, it.value];
      return { name: it.name, low: low - furthest(it), high: high + furthest(it) };
    });
    const still = ranges.filter((it) => !names.has(it.name));
    const evaluator = yield* evaluators.points(
      ask.scenario,
      { inputs: [...around, ...still].map((it) => it.name), results: [] },
      [...around, ...still],
    );
    return evaluator.road.by === 'replay' ? new MountOdds(evaluator, ask, readings, errors) : undefined;
  }

  /** The limits judged, in the order of every answer. */
  get limits(): readonly string[] {
    return this.#evaluator.limits;
  }

  /** Each limit's standard uncertainty of room at a mount, to first order; NaN where it has none. */
  *deviationsAt(values: readonly number[]): Generator<Progress, Float64Array, void> {
    const errors = this.#at(values);
    const model = errorModel(errors, this.#readings.share);
    const evaluator = this.#over(values);
    const steep = yield* slopes(evaluator, errors, new Meter());
    // The room itself does not enter the deviation.
    return Float64Array.from(steep, (it) => firstOrder(model, 0, it)?.deviation ?? Number.NaN);
  }

  /** The chance that every limit holds at a mount, sampled. */
  *holdsAt(values: readonly number[]): Generator<Progress, Estimate, void> {
    const model = errorModel(this.#at(values), this.#readings.share);
    const order = model.factors.map((_, i) => i);
    const { certainty } = this.#readings;
    const settings = { repeats: REPEATS, points: POINTS, seed: this.#seed, certainty };
    const found = yield* sampled(this.#over(values), model, order, settings, new Meter());
    return holdsFrom(found.together.fails);
  }

  #at(values: readonly number[]): readonly Varied[] {
    return this.#errors.map((it) => {
      const moved = this.#moving.indexOf(it.name);
      return moved === -1 ? it : { ...it, value: values[moved] as number };
    });
  }

  /** The evaluator over the readings alone; what moves without an error stands as the mount has it. */
  #over(values: readonly number[]): PointEvaluator {
    const evaluator = this.#evaluator;
    const still = evaluator.inputs
      .slice(this.#errors.length)
      .map((name) => values[this.#moving.indexOf(name)] as number);
    return {
      inputs: evaluator.inputs.slice(0, this.#errors.length),
      results: [],
      limits: evaluator.limits,
      evaluateMany: (columns, count) => {
        const rest = still.map((it): Column => new Float64Array(count).fill(it));
        return evaluator.evaluateMany([...columns, ...rest], count);
      },
    };
  }
}
