import { STATES } from '../../calc/limits/states.ts';
import { isFailing } from '../look.ts';
import { leastOf } from '../map/depth.ts';
import type { PointEvaluator } from '../points.ts';
import { type FirstMountAsk, MADE, type Readings } from './ask.ts';
import type { Grid } from './grid.ts';
import { placed, type Sketch } from './rule.ts';

const NEAR = STATES.indexOf('near');

/** What a limit that fails counts for, besides how far it is outside: one that says it cannot be built leads. */
const CANNOT_BE_BUILT = 100;
const FAILS = 1;
/** Any limit that fails counts for more than all room. */
const OVER_ROOM = 1e6;
/** More than a whole bound outside, or inside, counts as that. */
const WHOLE = 1;
/** The share of a bound by which room fades: so much more of it, and it counts for a third. */
const FADES = 0.1;
const NEAR_COUNTS = 0.25;
/** A tube so long counts for a third, and none for a whole limit on its bound, mm: shorter than its ends it is hard to make. */
const SHORT_TUBE = 25;
const CANNOT_BE = Number.NEGATIVE_INFINITY;

/** Limits in one word of bits. */
const BITS = 31;

/** Tubes that a mount is cut from, told by the evaluator of whole mounts; a single strut last. */
export const TUBES = ['port_strut_cut', 'starboard_strut_cut', 'single_strut_cut'] as const;

/** A mount that was judged. */
export interface Judged {
  readonly sketch: Sketch;
  readonly values: readonly number[];
  /** Limits that fail. */
  readonly failing: readonly string[];
  /** What the search climbs: room for the limits that have the least; a limit that fails counts for far more. */
  readonly score: number;
}

/** Mounts just judged; read them before the next are. */
export interface Seen {
  readonly count: number;
  /** How each stands, as in `Judged`; −∞ for one that cannot be at all. */
  readonly score: Float64Array;
  /** The limits that fail at each, as bits of words. */
  readonly failing: readonly Int32Array[];
  readonly at: (n: number) => Judged;
}

/** Told of all mounts that are judged. */
export type Watch = (seen: Seen) => void;

function isMetAmong(state: Uint8Array, refused: Uint8Array, count: number): boolean {
  for (let n = 0; n < count; n++) if (refused[n] === 0 && !isFailing(state[n])) return true;
  return false;
}

/** Judges mounts by the limits of an evaluator, many at once. */
export class Bench {
  readonly grid: Grid;
  readonly limits: readonly string[];
  readonly #ask: FirstMountAsk;
  readonly #evaluator: PointEvaluator;
  readonly #weights: readonly number[];
  #columns: readonly Float64Array[] = [];
  #score = new Float64Array(0);
  #failing: readonly Int32Array[] = [];
  readonly #unmet: Set<number>;
  #looked = 0;

  /** `ignored` limits are not judged. */
  constructor(ask: FirstMountAsk, evaluator: PointEvaluator, grid: Grid, ignored: ReadonlySet<string>) {
    this.grid = grid;
    this.limits = evaluator.limits;
    this.#ask = ask;
    this.#evaluator = evaluator;
    this.#weights = evaluator.limits.map((it) => {
      if (ignored.has(it)) return 0;
      return ask.built.has(it) ? CANNOT_BE_BUILT : FAILS;
    });
    this.#unmet = new Set(evaluator.limits.keys());
  }

  /** Limits that failed at every mount so far, ignored ones too. */
  get unmet(): readonly string[] {
    return [...this.#unmet].map((it) => this.limits[it] as string);
  }

  get looked(): number {
    return this.#looked;
  }

  /** `more` are values of further inputs of the evaluator, after those of `MADE`. */
  judge(
    sketches: readonly Sketch[],
    readings: Readings = this.#ask.readings,
    more: readonly number[] = [],
  ): Seen {
    const count = sketches.length;
    this.#looked += count;
    this.#fit(count, MADE.length + more.length);
    for (let n = 0; n < count; n++) {
      placed(sketches[n] as Sketch, readings, this.#ask.wedge, this.grid).forEach((value, k) => {
        (this.#columns[k] as Float64Array)[n] = value;
      });
    }
    more.forEach((value, k) => {
      this.#columns[MADE.length + k]?.fill(value, 0, count);
    });
    const points = this.#evaluator.evaluateMany(
      this.#columns.map((it) => it.subarray(0, count)),
      count,
    );
    const [score, failing] = [this.#score, this.#failing];
    score.fill(0, 0, count);
    for (const word of failing) word.fill(0, 0, count);
    for (let k = 0; k < points.limits.length; k++) {
      const { state, ratio } = points.limits[k] as (typeof points.limits)[number];
      const weight = this.#weights[k] as number;
      if (this.#unmet.has(k) && isMetAmong(state, points.refused, count)) this.#unmet.delete(k);
      if (weight === 0) continue;
      const word = failing[Math.floor(k / BITS)] as Int32Array;
      const bit = 1 << (k % BITS);
      for (let n = 0; n < count; n++) {
        const stands = state[n] as number;
        const depth = leastOf(stands, ratio[n] as number);
        if (isFailing(stands)) {
          word[n] = (word[n] as number) | bit;
          score[n] = (score[n] as number) - OVER_ROOM * weight * (1 + Math.min(WHOLE, Math.max(0, -depth)));
        } else if (depth < WHOLE) {
          score[n] = (score[n] as number) - Math.exp(-depth / FADES) - (stands === NEAR ? NEAR_COUNTS : 0);
        }
      }
    }
    for (let n = 0; n < count; n++) {
      const tubes = sketches[n]?.struts === 2 ? points.results.slice(0, 2) : points.results.slice(2);
      for (const cut of tubes) {
        const length = Math.max(0, cut[n] as number);
        if (!Number.isNaN(length)) score[n] = (score[n] as number) - Math.exp(-length / SHORT_TUBE);
      }
      if (points.refused[n] === 1) score[n] = CANNOT_BE;
    }
    return { count, score, failing, at: (n) => this.#at(n, sketches[n] as Sketch) };
  }

  /** The one with the best score, if it is better than what is known; undefined where there is none. */
  best(seen: Seen, known?: Judged): Judged | undefined {
    let [at, high] = [-1, known?.score ?? CANNOT_BE];
    for (let n = 0; n < seen.count; n++) {
      const score = seen.score[n] as number;
      if (score > high) [at, high] = [n, score];
    }
    return at < 0 ? known : seen.at(at);
  }

  #at(n: number, sketch: Sketch): Judged {
    return {
      sketch,
      values: MADE.map((_, k) => this.#columns[k]?.[n] as number),
      failing: this.limits.filter(
        (_, k) => ((this.#failing[Math.floor(k / BITS)]?.[n] as number) & (1 << (k % BITS))) !== 0,
      ),
      score: this.#score[n] as number,
    };
  }

  #fit(count: number, columns: number): void {
    if (this.#score.length >= count && this.#columns.length === columns) return;
    this.#columns = Array.from({ length: columns }, () => new Float64Array(count));
    this.#score = new Float64Array(count);
    const words = Math.ceil(this.limits.length / BITS);
    this.#failing = Array.from({ length: words }, () => new Int32Array(count));
  }
}
