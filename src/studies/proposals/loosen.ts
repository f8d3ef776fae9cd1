import type { Evaluators, PointRange } from '../points.ts';
import type { Progress } from '../study.ts';
import type { Loosened, Loosening, Mount, ProposalsAsk } from './ask.ts';
import { Bench } from './bench.ts';

/** Changes told. */
const MOST = 4;

/**
 * Single changes to bounds and gear values at which one of the mounts keeps every limit, the least first: how far each
 * must go, as a share of its usual range.
 */
export function* loosen(
  evaluators: Evaluators,
  ask: ProposalsAsk,
  mounts: readonly Mount[],
  ranges: readonly PointRange[],
): Generator<Progress, readonly Loosening[], void> {
  const { loosened, scenario, freed, bolts, present } = ask;
  if (loosened.length === 0 || mounts.length === 0) return [];
  const more = loosened.map(
    (it): PointRange => ({
      name: it.name,
      low: Math.min(it.present, ...it.values),
      high: Math.max(it.present, ...it.values),
    }),
  );
  const wide: ProposalsAsk = {
    ...ask,
    freed: [
      ...freed,
      ...loosened.map(({ name, values }) => ({
        name,
        moves: [{ input: name, sign: 1 as const }],
        values,
        whole: false,
      })),
    ],
    present: [...present, ...loosened.map((it) => it.present)],
  };
  const inputs = [...ranges.map((it) => it.name), ...loosened.map((it) => it.name)];
  const bench = new Bench(
    wide,
    yield* evaluators.points(scenario, { inputs, results: bolts }, [...ranges, ...more]),
  );
  const distance = (it: Loosened, value: number): number => Math.abs(value - it.present) / it.span;
  const found: { readonly loosening: Loosening; readonly far: number }[] = [];
  for (const [n, one] of loosened.entries()) {
    const values = one.values.toSorted((a, b) => distance(one, a) - distance(one, b));
    const tried = values.flatMap((to) =>
      mounts.map((mount) => ({
        to,
        values: [...mount.values, ...loosened.map((it) => (it === one ? to : it.present))],
      })),
    );
    const holding: { readonly at: number; readonly mount: Mount }[] = [];
    let at = -1;
    bench.look(
      tried.map((it) => it.values),
      (mount, failing) => {
        at++;
        if (failing.length === 0) holding.push({ at, mount: mount() });
      },
    );
    const best = holding.reduce<(typeof holding)[number] | undefined>((a, b) => {
      if (a === undefined) return b;
      const [farA, farB] = [a, b].map((it) => distance(one, it.mount.values[ranges.length + n] as number));
      return (farB as number) < (farA as number) ||
        ((farB as number) === (farA as number) && b.mount.least > a.mount.least)
        ? b
        : a;
    }, undefined);
    yield { done: n + 1, of: loosened.length };
    if (best === undefined) continue;
    const to = best.mount.values[ranges.length + n] as number;
    const mount = { ...best.mount, values: best.mount.values.slice(0, ranges.length) };
    found.push({ loosening: { name: one.name, from: one.present, to, mount }, far: distance(one, to) });
  }
  return found
    .sort((a, b) => a.far - b.far)
    .slice(0, MOST)
    .map((it) => it.loosening);
}
