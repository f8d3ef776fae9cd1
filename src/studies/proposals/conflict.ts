import type { Mount } from './ask.ts';

/** Most limits among which the smallest conflict is looked for; a larger one is only made as small as it can be. */
const LARGEST = 4;

/**
 * The sets of limits that fail together at some mount, none of which holds another: limits conflict when every mount
 * fails at least one of them, so when they meet every one of these sets.
 */
export class FailingSets {
  #sets: (readonly number[])[] = [];
  /** By set, the values of the first mount at which its limits failed. */
  readonly #seen = new Map<string, readonly number[]>();

  put(failing: readonly number[], mount: () => Pick<Mount, 'values'>): void {
    const key = failing.join();
    if (this.#seen.has(key)) return;
    this.#seen.set(key, mount().values);
    const holds = (a: readonly number[], b: readonly number[]): boolean => b.every((it) => a.includes(it));
    if (this.#sets.some((known) => holds(failing, known))) return;
    this.#sets = [...this.#sets.filter((known) => !holds(known, failing)), failing];
  }

  /** For each set that is as asked, the values of a mount at which its limits fail. */
  examples(isAsked: (failing: readonly number[]) => boolean): readonly (readonly number[])[] {
    return this.#sets.flatMap((it) => {
      const values = this.#seen.get(it.join());
      return values !== undefined && isAsked(it) ? [values] : [];
    });
  }

  /**
   * The smallest set of limits that meets every one, the first in the limits' order. Beyond four limits: one that can
   * spare none of its own, though a smaller one made of others may be. Undefined where nothing failed.
   */
  smallest(): { readonly limits: readonly number[]; readonly isSmallest: boolean } | undefined {
    const all = [...new Set(this.#sets.flat())].sort((a, b) => a - b);
    for (let size = 1; size <= Math.min(LARGEST, all.length); size++) {
      const found = this.#meeting([], 0, all, size);
      if (found !== undefined) return { limits: found, isSmallest: true };
    }
    if (all.length === 0) return undefined;
    const isMet = (limits: readonly number[]): boolean =>
      this.#sets.every((set) => set.some((it) => limits.includes(it)));
    const spared = all.reduce<readonly number[]>((kept, it) => {
      const fewer = kept.filter((other) => other !== it);
      return isMet(fewer) ? fewer : kept;
    }, all);
    return { limits: spared, isSmallest: false };
  }

  #meeting(
    chosen: readonly number[],
    from: number,
    all: readonly number[],
    size: number,
  ): readonly number[] | undefined {
    const open = this.#sets.find((set) => !set.some((it) => chosen.includes(it)));
    if (open === undefined) return chosen.length > 0 ? chosen : undefined;
    if (size === 0) return undefined;
    // Only a limit of a set not yet met can help.
    for (const it of open) {
      const found = this.#meeting(
        [...chosen, it].sort((a, b) => a - b),
        from,
        all,
        size - 1,
      );
      if (found !== undefined) return found;
    }
    return undefined;
  }
}
