import { FailingSets } from '../proposals/conflict.ts';
import type { Judged, Seen, Watch } from './bench.ts';

/** Mounts kept from which a single change might free what conflicts. */
const MOST = 40;

/** Sets of limits by the bits of their words. */
type Words<T> = Map<number, Words<T> | T>;

interface Miss {
  nearest: Judged;
  /** The limits that were judged. */
  readonly judged: ReadonlySet<string>;
}

/** What failed at mounts that do not keep every limit: which limits together, and where that came nearest to holding. */
export class Misses {
  readonly #sets = new FailingSets();
  readonly #limits: readonly string[];
  readonly #places: ReadonlyMap<string, number>;
  readonly #all: Miss[] = [];
  /** `limits` are all there are, in their order. */
  constructor(limits: readonly string[]) {
    this.#limits = limits;
    this.#places = new Map(limits.map((it, n) => [it, n]));
  }

  /** A watch over what one bench judges, whose limits have an order of their own. */
  watching(judged: readonly string[]): Watch {
    const known: Words<Miss> = new Map();
    const of = new Set(judged);
    return (seen) => {
      for (let n = 0; n < seen.count; n++) this.#put(seen, n, known, of);
    };
  }

  #put({ failing, score, at }: Seen, n: number, known: Words<Miss>, judged: ReadonlySet<string>): void {
    if (score[n] === Number.NEGATIVE_INFINITY || failing.every((word) => word[n] === 0)) return;
    let level = known;
    const last = failing.length - 1;
    for (let k = 0; k < last; k++) {
      const bits = failing[k]?.[n] as number;
      const next = (level.get(bits) as Words<Miss> | undefined) ?? new Map();
      level.set(bits, next);
      level = next;
    }
    const bits = failing[last]?.[n] as number;
    const miss = level.get(bits) as Miss | undefined;
    if (miss !== undefined) {
      if ((score[n] as number) > miss.nearest.score) miss.nearest = at(n);
      return;
    }
    const made: Miss = { nearest: at(n), judged };
    level.set(bits, made);
    this.#all.push(made);
    this.#sets.put(
      made.nearest.failing.map((it) => this.#places.get(it) as number),
      () => made.nearest,
    );
  }

  /**
   * The smallest set of limits of which every mount fails one; `isSmallest` when any fewer of them are known to be kept
   * by some mount.
   */
  smallest(): { readonly limits: readonly string[]; readonly isSmallest: boolean } {
    const found = this.#sets.smallest();
    const limits = (found?.limits ?? []).map((it) => this.#limits[it] as string);
    const failsAlone = (limit: string): boolean =>
      this.#all.some(
        ({ nearest, judged }) =>
          limits.every((it) => judged.has(it)) &&
          limits.every((it) => nearest.failing.includes(it) === (it === limit)),
      );
    return { limits, isSmallest: found?.isSmallest === true && limits.every(failsAlone) };
  }

  /** One mount for each set of limits that fail together, those that fail the fewest first. */
  get mounts(): readonly Judged[] {
    return this.#all
      .map((it) => it.nearest)
      .sort((a, b) => a.failing.length - b.failing.length || b.score - a.score)
      .slice(0, MOST);
  }
}
