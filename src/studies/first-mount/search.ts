import { seeded } from '../../calc/uncertainty/seeded.ts';
import type { Progress } from '../study.ts';
import type { Readings } from './ask.ts';
import type { Bench, Judged, Watch } from './bench.ts';
import { highestUpper, type Sketch } from './rule.ts';
import type { Stack } from './stacks.ts';

/** Mounts drawn up all over the face: so many stacks, heights of each bracket, places of the shaft's foot, spreads. */
const STACKS = 7;
const LOWER = 12;
const UPPER = 8;
const FEET = [0.15, 0.85];
const SPREADS = [0.1, 0.5, 0.9];
/** Of these so many are improved, no two that have the same stack and stand closer together than this, mm. */
const STARTS = 6;
const APART = 150;
/** Most steps of improvement, how many in vain make an end, and how many are told to come. */
const STEPS = 80;
const IN_VAIN = 3;
const EXPECTED = 14;
/** Moves by chance at each step, of several changes at once. */
const BY_CHANCE = 16;
const CHANGES = 3;
/** Mounts judged between two reports. */
const TOGETHER = 512;

export interface SearchAsk {
  readonly readings: Readings;
  readonly stacks: readonly Stack[];
  readonly struts: 1 | 2;
  readonly watch: Watch;
  readonly seed: number;
}

/** So many values inside two ends, evenly spread. */
const across = (count: number, low: number, high: number): number[] =>
  Array.from({ length: count }, (_, n) => low + ((high - low) * (n + 0.5)) / count);

/** Mounts by the rule all over the face. */
function drawnUp({ readings: by, stacks, struts }: SearchAsk, { grid }: Bench): Sketch[] {
  const some = new Set(across(STACKS, 0, stacks.length).map((it) => stacks[Math.floor(it)] as Stack));
  const spreads = struts === 2 ? SPREADS : [0.5];
  return [...some].flatMap((stack) =>
    across(LOWER, by.transom_bottom, by.transom_top).flatMap((low) => {
      const lower = grid.near(low);
      const least = lower + by.lower_clamp_depth;
      return across(UPPER, least, Math.max(highestUpper(lower, by), least)).flatMap((up) => {
        const upper = grid.near(up);
        return FEET.flatMap((foot) =>
          spreads.map((spread): Sketch => ({ struts, stack, lower, upper, foot, spread, drop: 0 })),
        );
      });
    }),
  );
}

type Move = readonly [change: (from: Sketch, by: number) => Sketch, steps: readonly number[]];

const bothWays = (sizes: readonly number[]): readonly number[] => sizes.flatMap((it) => [it, -it]);
const HEIGHTS = bothWays([1, 3, 10, 30]);
const SHARES = bothWays([0.02, 0.1, 0.3]);
const SHEETS = bothWays([1, 2, 4]);

const share = (value: number): number => Math.min(1, Math.max(0, value));

/** What may be changed about a mount, and by how much at a time. */
function movesOf({ stacks, struts }: SearchAsk, { grid }: Bench): readonly Move[] {
  const stacked = (from: Sketch, by: number): Sketch => {
    const at = Math.min(stacks.length - 1, Math.max(0, stacks.indexOf(from.stack) + by));
    return { ...from, stack: stacks[at] as Stack };
  };
  const lower = (from: Sketch, by: number): Sketch => ({ ...from, lower: grid.step(from.lower, by) });
  const upper = (from: Sketch, by: number): Sketch => ({ ...from, upper: grid.step(from.upper, by) });
  const spread = (from: Sketch, by: number): Sketch => ({ ...from, spread: share(from.spread + by) });
  return [
    [stacked, SHEETS],
    [lower, HEIGHTS],
    [upper, HEIGHTS],
    [(from, by) => lower(upper(from, by), by), HEIGHTS],
    [(from, by) => ({ ...from, drop: from.drop + by * grid.size }), HEIGHTS],
    [(from, by) => ({ ...from, foot: share(from.foot + by) }), SHARES],
    ...(struts === 2 ? [[spread, SHARES] as const] : []),
  ];
}

/** Mounts one move away, and some several moves away. */
function around(from: Sketch, moves: readonly Move[], random: () => number): Sketch[] {
  const pick = <T>(some: readonly T[]): T => some[Math.floor(random() * some.length)] as T;
  const far = Array.from({ length: BY_CHANCE }, () =>
    Array.from({ length: CHANGES }, () => pick(moves)).reduce(
      (now, [change, steps]) => change(now, pick(steps)),
      from,
    ),
  );
  return [...moves.flatMap(([change, steps]) => steps.map((by) => change(from, by))), ...far];
}

const isApart = (a: Sketch, b: Sketch): boolean =>
  a.stack !== b.stack || Math.abs(a.lower - b.lower) + Math.abs(a.upper - b.upper) > APART;

/** The best by their scores, no two of them close together. */
function starts(all: readonly Sketch[], scores: readonly number[]): Sketch[] {
  const chosen: Sketch[] = [];
  const order = [...all.keys()].sort((a, b) => (scores[b] as number) - (scores[a] as number));
  for (const it of order.map((n) => all[n] as Sketch)) {
    if (chosen.length === STARTS) break;
    if (chosen.every((other) => isApart(it, other))) chosen.push(it);
  }
  return chosen;
}

/** Improves mounts by small changes until nothing is gained, and gives back the best; the watch hears of every mount. */
export function* improve(
  from: readonly Judged[],
  ask: SearchAsk,
  bench: Bench,
): Generator<Progress, Judged | undefined, void> {
  const random = seeded(ask.seed);
  const moves = movesOf(ask, bench);
  const crowd = from.map((best) => ({ best, vain: 0 }));
  const start = bench.looked;
  const perStep = from.length * (moves.reduce((sum, [, steps]) => sum + steps.length, 0) + BY_CHANCE);
  for (let step = 1; step <= STEPS && crowd.some((it) => it.vain < IN_VAIN); step++) {
    for (const one of crowd.filter((it) => it.vain < IN_VAIN)) {
      const seen = bench.judge(around(one.best.sketch, moves, random));
      ask.watch(seen);
      const better = bench.best(seen, one.best) ?? one.best;
      one.vain = better === one.best ? one.vain + 1 : 0;
      one.best = better;
    }
    const done = bench.looked - start;
    yield { done, of: Math.max(done, EXPECTED * perStep) };
  }
  return crowd
    .map((it) => it.best)
    .reduce<Judged | undefined>((a, b) => (a === undefined || b.score > a.score ? b : a), undefined);
}

/** Draws up mounts by the rule all over the face, and improves the best of them; the watch hears of every mount. */
export function* search(ask: SearchAsk, bench: Bench): Generator<Progress, void, void> {
  const drawn = drawnUp(ask, bench);
  const scores: number[] = [];
  for (let from = 0; from < drawn.length; from += TOGETHER) {
    const seen = bench.judge(drawn.slice(from, from + TOGETHER));
    ask.watch(seen);
    scores.push(...seen.score.subarray(0, seen.count));
    yield { done: scores.length, of: 2 * drawn.length };
  }
  const chosen = bench.judge(starts(drawn, scores));
  const first = Array.from({ length: chosen.count }, (_, n) => chosen.at(n));
  for (const { done, of } of improve(first, ask, bench))
    yield { done: drawn.length + done, of: drawn.length + of };
}
