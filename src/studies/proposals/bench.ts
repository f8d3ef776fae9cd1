import { normalBelow } from '../../calc/uncertainty/normal.ts';
import { isFailing } from '../look.ts';
import { leastOf } from '../map/depth.ts';
import type { PointEvaluator } from '../points.ts';
import { type Freed, inputsOf, type Mount, type ProposalsAsk } from './ask.ts';

/** A mount by which of its values each freed choice has. */
export type Genes = readonly number[];

/** What a mount came to, by its place in a round. */
export interface Seen {
  /** 1 or more where everything judged holds; less the more fails: what the search climbs. */
  readonly score: number;
  readonly least: number;
}

/** Failing by more than the whole of a bound counts no more. */
const DEEPEST = 1;
const REFUSED = -1000;
/** Chances to fail below this are all the same to the search. */
const LEAST_CHANCE = 1e-30;
/** More deviations of room than this leave no chance worth adding. */
const FAR = 12;

/** Values of the inputs that move, for a mount's genes. */
export function valuesOf(freed: readonly Freed[], inputs: readonly string[], genes: Genes): number[] {
  const values: number[] = Array(inputs.length).fill(Number.NaN);
  freed.forEach(({ moves, values: allowed }, i) => {
    const value = allowed[genes[i] as number] as number;
    for (const { input, sign } of moves) values[inputs.indexOf(input)] = sign === 1 ? value : 0 - value;
  });
  return values;
}

/** A mount as genes: the nearest value of each freed choice. */
export const genesAt = (freed: readonly Freed[], inputs: readonly string[], at: readonly number[]): Genes =>
  freed.map(({ moves, values }) => {
    const [move] = moves;
    const there = move === undefined ? Number.NaN : (at[inputs.indexOf(move.input)] as number);
    const value = move?.sign === -1 ? -there : there;
    return values.reduce(
      (best, it, n) => (Math.abs(it - value) < Math.abs((values[best] as number) - value) ? n : best),
      0,
    );
  });

/** Told of every mount as it is looked at, with the limits that fail there by their numbers, and by how much together. */
export type Watch = (mount: () => Mount, failing: readonly number[], violation: number) => void;

/** Looks at mounts, many at once. */
export class Bench {
  readonly inputs: readonly string[];
  readonly limits: readonly string[];
  readonly #ask: ProposalsAsk;
  readonly #evaluator: PointEvaluator;
  #looked = 0;
  /** Each limit's spread of room, once odds are reckoned with. */
  #deviations: Float64Array | undefined;
  /** Whether the search climbs the odds rather than the least room. */
  climbsOdds = false;
  /** Whether it climbs towards fewer limits that fail first, and only then towards failing by less. */
  countsFirst = false;
  /** What it climbs instead once everything holds, by a mount's values. */
  climb: ((values: readonly number[]) => number) | undefined;

  constructor(ask: ProposalsAsk, evaluator: PointEvaluator) {
    this.#ask = ask;
    this.#evaluator = evaluator;
    this.inputs = inputsOf(ask);
    this.limits = evaluator.limits;
  }

  get looked(): number {
    return this.#looked;
  }

  /** From now on every mount has its chance to fail to first order, with the spreads given. */
  reckonOdds(deviations: Float64Array): void {
    this.#deviations = deviations;
  }

  #fails(rooms: (limit: number) => number): number | undefined {
    const deviations = this.#deviations;
    if (deviations === undefined) return undefined;
    let sum = 0;
    for (let k = 0; k < deviations.length; k++) {
      const away = rooms(k) / (deviations[k] as number);
      if (away < FAR) sum += normalBelow(-away);
    }
    return sum;
  }

  /** Looks at mounts by their genes. With `judged`, only those limits count for the score. */
  lookAt(mounts: readonly Genes[], watch?: Watch, judged?: ReadonlySet<number>): Seen[] {
    const { freed } = this.#ask;
    return this.look(
      mounts.map((genes) => valuesOf(freed, this.inputs, genes)),
      watch,
      judged,
    );
  }

  /** Looks at mounts by the values of their inputs. */
  look(mounts: readonly (readonly number[])[], watch?: Watch, judged?: ReadonlySet<number>): Seen[] {
    const count = mounts.length;
    const { shims } = this.#ask;
    const shimsAt = this.inputs.indexOf(shims.input);
    this.#looked += count;
    const columns = this.inputs.map((_, k) => Float64Array.from(mounts, (values) => values[k] as number));
    const points = this.#evaluator.evaluateMany(columns, count);
    const seen: Seen[] = [];
    for (let n = 0; n < count; n++) {
      let [least, counted, violation, at] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, 0, -1];
      const failing: number[] = [];
      points.limits.forEach(({ state, ratio }, k) => {
        const [s, r] = [state[n] as number, ratio[n] as number];
        const depth = leastOf(s, r);
        const isBroken = isFailing(s);
        if (isBroken) failing.push(k);
        if (depth < least) [least, at] = [depth, k];
        if (judged?.has(k) === false) return;
        if (isBroken) violation += Math.min(DEEPEST, Math.max(1e-9, -depth));
        counted = Math.min(counted, depth);
      });
      const isRefused = points.refused[n] === 1;
      const holds = !isRefused && violation === 0;
      const fails = holds ? this.#fails((k) => points.limits[k]?.room[n] as number) : undefined;
      const climbed =
        this.climb !== undefined
          ? this.climb(mounts[n] as readonly number[])
          : this.climbsOdds && fails !== undefined
            ? Math.max(0, 2 - Math.log10(fails + LEAST_CHANCE))
            : Math.min(counted, 1e6);
      // Failing by less weighs under one limit more that fails.
      const broken = this.countsFirst ? failing.length + violation / (failing.length + 1) : violation;
      const score = isRefused ? REFUSED : holds ? 1 + climbed : -broken;
      seen.push({ score, least });
      if (watch === undefined || isRefused) continue;
      const values = mounts[n] as readonly number[];
      watch(
        () => ({
          values,
          least,
          limit: this.limits[at],
          room: at < 0 ? Number.NaN : (points.limits[at]?.room[n] as number),
          failing: failing.map((k) => this.limits[k] as string),
          shims: values[shimsAt] ?? shims.present,
          bolts: points.results.reduce((sum, result) => sum + (result[n] as number), 0),
          ...(fails === undefined ? {} : { fails }),
        }),
        failing,
        violation,
      );
    }
    return seen;
  }

  /** One mount by the values of its inputs; undefined where they cannot be so together. */
  mountAt(values: readonly number[], watch?: Watch): Mount | undefined {
    let found: Mount | undefined;
    this.look([values], (mount, failing, violation) => {
      const seen = mount();
      found = seen;
      watch?.(() => seen, failing, violation);
    });
    return found;
  }
}
