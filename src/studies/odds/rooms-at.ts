import { look } from '../look.ts';
import type { Meter } from '../meter.ts';
import type { PointEvaluator } from '../points.ts';
import type { Progress } from '../study.ts';
import { type ErrorModel, fromScores } from '../uncertain/error-model.ts';

/** One limit at some points: its room, NaN where it has none, and whether it fails. */
export interface RoomsAt {
  readonly room: readonly number[];
  readonly fails: readonly boolean[];
}

/** One limit as a function of the scores of some factors; all the others stand at their middle. */
export class ScoredRoom {
  /** Factors that are varied, by their place in the model. */
  readonly factors: readonly number[];
  evaluations = 0;
  readonly #evaluator: PointEvaluator;
  readonly #model: ErrorModel;
  readonly #limit: number;
  readonly #meter: Meter;

  constructor(
    evaluator: PointEvaluator,
    model: ErrorModel,
    limit: number,
    factors: readonly number[],
    meter: Meter,
  ) {
    this.#evaluator = evaluator;
    this.#model = model;
    this.#limit = limit;
    this.factors = factors;
    this.#meter = meter;
  }

  /** Rooms at points given by the scores of the varied factors. */
  *at(points: readonly (readonly number[])[]): Generator<Progress, RoomsAt, void> {
    const count = points.length;
    const zero = new Float64Array(count);
    const scores = this.#model.factors.map((_, factor) => {
      const place = this.factors.indexOf(factor);
      return place === -1 ? zero : Float64Array.from(points, (it) => it[place] ?? 0);
    });
    this.#meter.expect(count);
    this.evaluations += count;
    const looked = yield* look(this.#evaluator, fromScores(this.#model, scores, count), count, this.#meter);
    return {
      room: Array.from(looked.room[this.#limit] ?? []),
      fails: Array.from(looked.fails[this.#limit] ?? [], (it) => it === 1),
    };
  }
}
