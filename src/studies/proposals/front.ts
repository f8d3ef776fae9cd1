import type { Best, Mount, Proposal } from './ask.ts';

/** Rooms closer than this are the same. */
const SAME = 1e-9;

/** Most proposals told. */
const MOST = 8;

/** Bolts without an answer are longer than any; so are shims that cannot be counted more. */
const orMost = (value: number | undefined): number =>
  value === undefined || Number.isNaN(value) ? Number.POSITIVE_INFINITY : value;

/** Chances to fail below this are the same to an owner. */
const NO_CHANCE = 1e-9;

/** The chance that some limit fails: sampled where it was, else to first order; any chance where neither was. */
const failsOf = ({ odds, fails = Number.POSITIVE_INFINITY }: Mount): number =>
  Math.max(NO_CHANCE, odds === undefined ? fails : 1 - odds.value);

/** What a mount is judged by: less is better, closer than `same` is the same. */
interface Goal {
  readonly best: Best;
  readonly of: (it: Mount) => number;
  readonly same: number;
}

const GOALS: readonly Goal[] = [
  { best: 'room', of: (it) => -it.least, same: SAME },
  { best: 'odds', of: failsOf, same: 0 },
  { best: 'shims', of: (it) => orMost(it.shims), same: 0 },
  { best: 'bolts', of: (it) => orMost(it.bolts), same: 0 },
];

/** The mounts with the most room, or the best odds, found so far: one for each count of shims and length of bolts. */
export class Archive {
  readonly #best = new Map<string, Mount>();
  readonly #likeliest = new Map<string, Mount>();

  /** Whether the mount is the best of its kind so far. */
  put(mount: Mount): boolean {
    const key = `${mount.shims} ${mount.bolts}`;
    const roomiest = this.#best.get(key);
    const hasMore = roomiest === undefined || mount.least > roomiest.least + SAME;
    if (hasMore) this.#best.set(key, mount);
    if (mount.fails === undefined) return hasMore;
    const likeliest = this.#likeliest.get(key);
    const isLikelier = likeliest?.fails === undefined || mount.fails < likeliest.fails;
    if (isLikelier) this.#likeliest.set(key, mount);
    return hasMore || isLikelier;
  }

  get mounts(): readonly Mount[] {
    return [...new Set([...this.#best.values(), ...this.#likeliest.values()])];
  }
}

/** Whether one mount is at least as good at everything as another, and better at something. */
function beats(a: Mount, b: Mount): boolean {
  let better = false;
  for (const { of, same } of GOALS) {
    const [mine, its] = [of(a), of(b)];
    if (mine > its + same) return false;
    if (mine < its - same) better = true;
  }
  return better;
}

/** As many as are told: the best at each goal, and what is spread between. */
function thinned(front: readonly Mount[]): readonly Mount[] {
  if (front.length <= MOST) return front;
  const ends = GOALS.map(({ of }) => front.reduce((best, it) => (of(it) < of(best) ? it : best)));
  const kept = new Set<Mount>(ends);
  for (let i = 0; i < MOST && kept.size < MOST; i++) {
    kept.add(front[Math.round((i * (front.length - 1)) / (MOST - 1))] as Mount);
  }
  return front.filter((it) => kept.has(it));
}

/** Negative when the first is better at a goal; at one where they are the same, at the goals in their order. */
function compareAt(goal: Goal, a: Mount, b: Mount): number {
  for (const { of, same } of [goal, ...GOALS]) {
    const [mine, its] = [of(a), of(b)];
    if (mine < its - same) return -1;
    if (mine > its + same) return 1;
  }
  return 0;
}

/**
 * Each with what it comes first at. A place is one mount's alone: of two that are the same at it the one that is better
 * elsewhere has it. Where one of the others, that keep every limit as well, is better than all of them, none has it.
 */
export function withBest(mounts: readonly Mount[], others: readonly Mount[] = []): readonly Proposal[] {
  const holding = others.filter((it) => it.failing.length === 0 && it.values.length > 0);
  const isReckoned = mounts.some((it) => it.fails !== undefined || it.odds !== undefined);
  const first = GOALS.filter((it) => it.best !== 'odds' || isReckoned).flatMap((goal) => {
    const [top] = mounts.toSorted((a, b) => compareAt(goal, a, b));
    if (top === undefined) return [];
    const isBeaten = holding.some((it) => goal.of(it) < goal.of(top) - goal.same);
    return isBeaten ? [] : [{ top, best: goal.best }];
  });
  return mounts.map((it) => ({
    ...it,
    best: first.filter(({ top }) => top === it).map(({ best }) => best),
  }));
}

/** The mounts that no other beats, the most room first; a long list keeps its ends and what is spread between. */
export function frontOf(mounts: readonly Mount[], others: readonly Mount[] = []): readonly Proposal[] {
  const front = mounts
    .filter((it) => !mounts.some((other) => beats(other, it)))
    .sort((a, b) => b.least - a.least || orMost(a.shims) - orMost(b.shims));
  return withBest(thinned(front), others);
}
