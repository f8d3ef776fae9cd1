import { STATES } from '../../calc/limits/states.ts';
import { look } from '../look.ts';
import type { Meter } from '../meter.ts';
import type { PointEvaluator } from '../points.ts';
import { type Standing, standingOf } from '../standing.ts';
import type { Progress } from '../study.ts';

/** One value of the input and how every limit stands there. */
export interface Spot {
  readonly x: number;
  readonly standing: readonly Standing[];
  /** NaN where a limit has no room. */
  readonly room: readonly number[];
}

const standingAt = (state: number | undefined, refused: boolean): Standing =>
  refused ? 'no answer' : standingOf({ state: STATES[state ?? 0] ?? 'no answer' });

/** All values looked at along one input, rising. */
export class Track {
  #spots: Spot[] = [];
  readonly #evaluator: PointEvaluator;
  readonly #meter: Meter;

  constructor(evaluator: PointEvaluator, meter: Meter) {
    this.#evaluator = evaluator;
    this.#meter = meter;
  }

  get spots(): readonly Spot[] {
    return this.#spots;
  }

  /** Looks at more values; those known already are left out. */
  *visit(values: readonly number[]): Generator<Progress, void, void> {
    const known = new Set(this.#spots.map((it) => it.x));
    const fresh = [...new Set(values)].filter((it) => !known.has(it));
    if (fresh.length === 0) return;
    this.#meter.expect(fresh.length);
    const looked = yield* look(this.#evaluator, [Float64Array.from(fresh)], fresh.length, this.#meter);
    const spots = fresh.map((x, n): Spot => {
      const refused = looked.refused[n] === 1;
      return {
        x,
        standing: looked.state.map((it) => standingAt(it[n], refused)),
        room: looked.room.map((it) => (refused ? Number.NaN : (it[n] ?? Number.NaN))),
      };
    });
    this.#spots = [...this.#spots, ...spots].sort((a, b) => a.x - b.x);
  }
}
