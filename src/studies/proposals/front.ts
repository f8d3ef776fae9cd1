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

/** The chance that some limit fails: sampled where it was, else to first order. */
const failsOf = ({ odds, fails = 0 }: Mount): number =>
  Math.max(NO_CHANCE, odds === undefined ? fails : 1 - odds.value);

/** What a mount is judged by: less is better, closer than `same` is the same. */
const GOALS: readonly { readonly best: Best; readonly of: (it: Mount) => number; readonly same: number }[] = [
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

/** Each with what no other of them is better at. */
export function withBest(mounts: readonly Mount[]): readonly Proposal[] {
  const reckoned = mounts.some((it) => it.fails !== undefined);
  const goals = GOALS.filter((it) => it.best !== 'odds' || reckoned).map((it) => ({
    ...it,
    least: Math.min(...mounts.map(it.of)),
  }));
  return mounts.map((it) => ({
    ...it,
    best: goals.filter(({ of, least, same }) => of(it) <= least + same).map(({ best }) => best),
  }));
}

/** The mounts that no other beats, the most room first; a long list keeps its ends and what is spread between. */
export function frontOf(mounts: readonly Mount[]): readonly Proposal[] {
  const front = mounts
    .filter((it) => !mounts.some((other) => beats(other, it)))
    .sort((a, b) => b.least - a.least || orMost(a.shims) - orMost(b.shims));
  return withBest(thinned(front));
}
