import { seeded } from '../../calc/uncertainty/seeded.ts';
import type { Evaluators, PointEvaluator, PointRange } from '../points.ts';
import type { Progress } from '../study.ts';
import type { Freed, Loosened, Loosening, Mount, ProposalsAsk } from './ask.ts';
import { Bench, genesAt } from './bench.ts';
import type { FailingSets } from './conflict.ts';
import { countOf, search, TOGETHER } from './search.ts';

/** Changes told. */
const MOST = 4;
/** Mounts looked at for one change: as many where every one can be, else a search over so many. */
const MOST_EACH = 40_000;
const SEARCHED_EACH = 6000;
/** The same where the formula engine answers each mount by itself. */
const SEARCHED_BY_ENGINE = 200;
/** Mounts that a search begins with. */
const MOST_SEEDS = 5;
/** Mounts looked at to see whether those limits that a change leaves alone can be kept. */
const PER_CHECK = 1500;

/** What the search before left behind. */
export interface Left {
  readonly bench: Bench;
  /** The limits that failed together, at every mount that was looked at. */
  readonly sets: FailingSets;
  /** Whether those were all mounts there are. */
  readonly isEvery: boolean;
  /** Limits of which no mount keeps all; a change that touches none of them frees nothing. */
  readonly conflict: readonly number[];
}

/** An evaluator of some of another's inputs, the others held where they stand. */
function holding(
  evaluator: PointEvaluator,
  all: readonly string[],
  inputs: readonly string[],
  held: ReadonlyMap<string, number>,
): PointEvaluator {
  return {
    ...evaluator,
    inputs,
    evaluateMany: (columns, count) =>
      evaluator.evaluateMany(
        all.map((name) => {
          const at = inputs.indexOf(name);
          return at < 0 ? new Float64Array(count).fill(held.get(name) ?? Number.NaN) : (columns[at] ?? []);
        }),
        count,
      ),
  };
}

const distance = (it: Loosened, value: number): number => Math.abs(value - it.present) / it.span;

const geneOf = ({ name, values, present }: Loosened): Freed => ({
  name,
  moves: [{ input: name, sign: 1 }],
  values: [...new Set([...values, present])].sort((a, b) => a - b),
  whole: false,
});

/** A holding mount, and how far the change is that lets it hold. */
interface Freeing {
  readonly to: number;
  readonly far: number;
  readonly mount: Mount;
}

/** Keeps the mount that holds with the least change, and of those the one with the most room. */
class LeastChange {
  best: Freeing | undefined;
  readonly #of: Loosened;

  constructor(of: Loosened) {
    this.#of = of;
  }

  readonly watch = (mount: () => Mount, failing: readonly number[]): void => {
    if (failing.length > 0) return;
    const found = mount();
    const to = found.values.at(-1) as number;
    const far = distance(this.#of, to);
    const { best } = this;
    if (best !== undefined && (far > best.far || (far === best.far && found.least <= best.mount.least)))
      return;
    this.best = { to, far, mount: { ...found, values: found.values.slice(0, -1) } };
  };
}

/** Every mount whose failing limits a change could all free, with the change at one value after another, nearest first. */
function* amongAll(
  bench: Bench,
  one: Loosened,
  mounts: readonly (readonly number[])[],
): Generator<Progress, Freeing | undefined, void> {
  const least = new LeastChange(one);
  const values = one.values.toSorted((a, b) => distance(one, a) - distance(one, b));
  for (const to of values) {
    // Two values may lie equally far to either side.
    if (least.best !== undefined && distance(one, to) > least.best.far) break;
    for (let from = 0; from < mounts.length; from += TOGETHER) {
      const some = mounts.slice(from, from + TOGETHER);
      bench.look(
        some.map((it) => [...it, to]),
        least.watch,
      );
      yield { done: bench.looked, of: bench.looked };
    }
  }
  return least.best;
}

/** A search over mounts and the change together, which climbs towards less change once everything holds. */
function* bySearch(
  bench: Bench,
  ask: ProposalsAsk,
  one: Loosened,
  near: readonly (readonly number[])[],
  evaluations: number,
): Generator<Progress, Freeing | undefined, void> {
  const least = new LeastChange(one);
  const freed = [...ask.freed, geneOf(one)];
  bench.climb = (values) => 1 / (1 + distance(one, values.at(-1) as number));
  const ends = [Math.min(...one.values), Math.max(...one.values)];
  const first = near
    .slice(0, MOST_SEEDS)
    .flatMap((it) => ends.map((to) => genesAt(freed, bench.inputs, [...it, to])));
  yield* search(bench, {
    freed,
    random: seeded(ask.seed + 3),
    evaluations,
    watch: least.watch,
    first,
  });
  return least.best;
}

/** Mounts by the limits that fail there. */
type ByFailing = ReadonlyMap<
  string,
  { readonly failing: readonly number[]; readonly mounts: (readonly number[])[] }
>;

/** Every mount there is, by the limits that fail there. */
function* everyMount(ask: ProposalsAsk, bench: Bench): Generator<Progress, ByFailing, void> {
  const found = new Map<string, { failing: readonly number[]; mounts: (readonly number[])[] }>();
  const watch = (mount: () => Mount, failing: readonly number[]): void => {
    const key = failing.join();
    const known = found.get(key);
    const { values } = mount();
    if (known === undefined) found.set(key, { failing, mounts: [values] });
    else known.mounts.push(values);
  };
  const { freed } = ask;
  yield* search(bench, { freed, random: () => 0, evaluations: countOf(freed), watch, first: [] });
  return found;
}

const isWithin = (failing: readonly number[], touched: ReadonlySet<number>): boolean =>
  failing.every((it) => touched.has(it));

/**
 * Single changes to bounds and gear values with which some mount keeps every limit, the least first: how far each must
 * go, as a share of its usual range. A mount can be freed by a change only if that touches every limit that fails there,
 * so that is where it is looked for: among all such mounts where they can be counted, else by a search over mounts and
 * change together.
 */
export function* loosen(
  evaluators: Evaluators,
  ask: ProposalsAsk,
  { bench, sets, isEvery, conflict }: Left,
  ranges: readonly PointRange[],
): Generator<Progress, readonly Loosening[], void> {
  const { scenario, freed, bolts } = ask;
  const numbers = new Map(bench.limits.map((name, k) => [name, k]));
  const loosened = ask.loosened
    .map((it) => ({ it, touched: new Set(it.limits.flatMap((name) => numbers.get(name) ?? [])) }))
    .filter(({ touched }) => conflict.length === 0 || conflict.some((it) => touched.has(it)));
  if (loosened.length === 0) return [];
  const every = isEvery ? yield* everyMount(ask, bench) : undefined;
  const held = new Map(loosened.map(({ it }) => [it.name, it.present]));
  const inputs = [...bench.inputs, ...held.keys()];
  const more = loosened.map(
    ({ it }): PointRange => ({
      name: it.name,
      low: Math.min(it.present, ...it.values),
      high: Math.max(it.present, ...it.values),
    }),
  );
  const evaluator = yield* evaluators.points(scenario, { inputs, results: bolts }, [...ranges, ...more]);
  const most = evaluator.road.by === 'replay' ? SEARCHED_EACH : SEARCHED_BY_ENGINE;
  const found: (Freeing & { readonly one: Loosened })[] = [];
  for (const [n, { it: one, touched }] of loosened.entries()) {
    yield { done: n, of: loosened.length };
    const wide: ProposalsAsk = { ...ask, freed: [...freed, geneOf(one)] };
    const freer = new Bench(wide, holding(evaluator, inputs, [...bench.inputs, one.name], held));
    const mounts =
      every === undefined
        ? sets.examples((failing) => isWithin(failing, touched))
        : [...every.values()].flatMap((it) => (isWithin(it.failing, touched) ? it.mounts : []));
    if (mounts.length === 0 && (every !== undefined || !(yield* canLeave(bench, ask, touched)))) continue;
    const isCounted =
      every !== undefined &&
      mounts.length * one.values.length <= (most === SEARCHED_EACH ? MOST_EACH : SEARCHED_BY_ENGINE);
    const freeing = isCounted
      ? yield* amongAll(freer, one, mounts)
      : yield* bySearch(freer, ask, one, mounts, most);
    if (freeing !== undefined) found.push({ ...freeing, one });
  }
  return found
    .sort((a, b) => a.far - b.far)
    .slice(0, MOST)
    .map(({ one, to, mount }) => ({ name: one.name, from: one.present, to, mount }));
}

/** Whether some mount keeps every limit but those that a change touches. */
function* canLeave(
  bench: Bench,
  ask: ProposalsAsk,
  touched: ReadonlySet<number>,
): Generator<Progress, boolean, void> {
  const judged = new Set(bench.limits.flatMap((_, k) => (touched.has(k) ? [] : [k])));
  const best = yield* search(bench, {
    freed: ask.freed,
    random: seeded(ask.seed + 4),
    evaluations: PER_CHECK,
    judged,
    first: [],
    firstThatHolds: true,
  });
  return best >= 1;
}
