import type { Best, Mount, Proposal } from './ask.ts';

/** Rooms closer than this are the same. */
const SAME = 1e-9;

/** Most proposals told. */
const MOST = 8;

/** Bolts without an answer are longer than any; so are shims that cannot be counted more. */
const orMost = (value: number): number => (Number.isNaN(value) ? Number.POSITIVE_INFINITY : value);

/** The mounts with the most room found so far, one for each count of shims and length of bolts. */
export class Archive {
  readonly #best = new Map<string, Mount>();

  /** Whether the mount is the best of its kind so far. `mount` is asked for only when it may be. */
  put(mount: Mount): boolean {
    const key = `${mount.shims} ${mount.bolts}`;
    const known = this.#best.get(key);
    if (known !== undefined && mount.least <= known.least + SAME) return false;
    this.#best.set(key, mount);
    return true;
  }

  get mounts(): readonly Mount[] {
    return [...this.#best.values()];
  }
}

/** Whether one mount is at least as good at everything as another, and better at something. */
function beats(a: Mount, b: Mount): boolean {
  const [shimsA, shimsB] = [orMost(a.shims), orMost(b.shims)];
  const [boltsA, boltsB] = [orMost(a.bolts), orMost(b.bolts)];
  if (a.least < b.least - SAME || shimsA > shimsB || boltsA > boltsB) return false;
  return a.least > b.least + SAME || shimsA < shimsB || boltsA < boltsB;
}

/** The mounts that no other beats, the most room first; a long list keeps its ends and what is spread between. */
export function frontOf(mounts: readonly Mount[]): readonly Proposal[] {
  const front = mounts
    .filter((it) => !mounts.some((other) => beats(other, it)))
    .sort((a, b) => b.least - a.least || orMost(a.shims) - orMost(b.shims));
  const spread =
    front.length <= MOST
      ? front
      : Array.from(
          { length: MOST },
          (_, i) => front[Math.round((i * (front.length - 1)) / (MOST - 1))] as Mount,
        );
  const least = (of: (it: Mount) => number): number => Math.min(...spread.map(of));
  const [fewest, shortest] = [least((it) => orMost(it.shims)), least((it) => orMost(it.bolts))];
  const most = Math.max(...spread.map((it) => it.least));
  return spread.map((it) => {
    const best: Best[] = [];
    if (it.least >= most - SAME) best.push('room');
    if (orMost(it.shims) <= fewest) best.push('shims');
    if (orMost(it.bolts) <= shortest) best.push('bolts');
    return { ...it, best };
  });
}
