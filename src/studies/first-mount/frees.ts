import type { Evaluators, PointRange } from '../points.ts';
import type { Loosened } from '../proposals/ask.ts';
import type { Progress } from '../study.ts';
import { type FirstMountAsk, type Freeing, MADE, type Readings } from './ask.ts';
import { Bench, type Judged } from './bench.ts';
import type { Grid } from './grid.ts';

/** Changes told for each conflict. */
const MOST = 4;
/** One in so many values is tried first. */
const FEW = 4;
const NOTHING: ReadonlySet<string> = new Set();

/** The first value that will do: every few are tried, then those before the first of them that does. */
function firstOf(values: readonly number[], does: (value: number) => boolean): number | undefined {
  for (let from = 0; from < values.length; from += FEW) {
    const some = values.slice(from, from + FEW);
    if (does(some.at(-1) as number)) return some.find(does);
  }
  return undefined;
}

/** The readings with one of them changed, if the rule goes by it. */
const changed = (readings: Readings, name: string, to: number): Readings =>
  name in readings ? { ...readings, [name]: to } : readings;

/**
 * For each set of limits that conflict, the single changes to bounds and parts after which one of the mounts keeps all of
 * them, failing nothing but what the other conflicts name; the least changes first. Mounts are drawn up again by the rule
 * for the changed part.
 */
export function* frees(
  evaluators: Evaluators,
  ask: FirstMountAsk,
  near: readonly Judged[],
  conflicts: readonly (readonly string[])[],
  ranges: readonly PointRange[],
  grid: Grid,
): Generator<Progress, readonly (readonly Freeing[])[], void> {
  const { loosened, readings } = ask;
  if (loosened.length === 0 || conflicts.length === 0) return conflicts.map(() => []);
  const more = loosened.map(
    ({ name, present, values }): PointRange => ({
      name,
      low: Math.min(present, ...values),
      high: Math.max(present, ...values),
    }),
  );
  const inputs = [...MADE, ...loosened.map((it) => it.name)];
  const evaluator = yield* evaluators.points(ask.scenario, { inputs, results: [] }, [...ranges, ...more]);
  const bench = new Bench(ask, evaluator, grid, NOTHING);
  const sketches = near.map((it) => it.sketch);
  const allowed = conflicts.map((_, n) => new Set(conflicts.filter((_, other) => other !== n).flat()));
  const freedBy = (one: Loosened, to: number): readonly boolean[] => {
    const values = loosened.map((it) => (it === one ? to : it.present));
    const seen = bench.judge(sketches, changed(readings, one.name, to), values);
    const failing = sketches.flatMap((_, k) =>
      seen.score[k] === Number.NEGATIVE_INFINITY ? [] : [seen.at(k).failing],
    );
    return allowed.map((ofOthers) => failing.some((it) => it.every((name) => ofOthers.has(name))));
  };
  const deciding = conflicts.map(
    (limits) => new Set(limits.flatMap((it) => [...(ask.decides.get(it) ?? [])])),
  );
  const distance = ({ present, span }: Loosened, value: number): number => Math.abs(value - present) / span;
  const found: { readonly freeing: Freeing; readonly far: number }[][] = conflicts.map(() => []);
  for (const [n, one] of loosened.entries()) {
    const known = new Map<number, readonly boolean[]>();
    const isFree = (to: number, conflict: number): boolean => {
      const tried = known.get(to) ?? freedBy(one, to);
      known.set(to, tried);
      return tried[conflict] === true;
    };
    for (const conflict of conflicts.keys()) {
      if (!deciding[conflict]?.has(one.name)) continue;
      const firsts = [1, -1].map((way) =>
        firstOf(
          one.values.filter((it) => (it - one.present) * way > 0).sort((a, b) => (a - b) * way),
          (to) => isFree(to, conflict),
        ),
      );
      const to = firsts
        .filter((it) => it !== undefined)
        .sort((a, b) => distance(one, a) - distance(one, b))[0];
      if (to === undefined) continue;
      found[conflict]?.push({ freeing: { name: one.name, from: one.present, to }, far: distance(one, to) });
    }
    yield { done: n + 1, of: loosened.length };
  }
  return found.map((it) =>
    it
      .sort((a, b) => a.far - b.far)
      .slice(0, MOST)
      .map(({ freeing }) => freeing),
  );
}
