import type { Mount } from './ask.ts';

/** Most mounts kept for the fewest that fail, whatever fails. */
const MOST = 8;

/** Mounts that come nearest to keeping every limit, and for each limit that alone fails the mount that comes nearest. */
export class NearMisses {
  #nearest: { readonly mount: Mount; readonly score: number }[] = [];
  readonly #alone = new Map<number, { readonly mount: Mount; readonly score: number }>();

  put(mount: () => Mount, failing: readonly number[], score: number): void {
    const [only] = failing;
    if (failing.length === 1 && only !== undefined) {
      const known = this.#alone.get(only);
      if (known === undefined || score > known.score) this.#alone.set(only, { mount: mount(), score });
    }
    const worst = this.#nearest.at(-1);
    if (this.#nearest.length >= MOST && worst !== undefined && score <= worst.score) return;
    this.#nearest = [...this.#nearest, { mount: mount(), score }]
      .sort((a, b) => b.score - a.score)
      .slice(0, MOST);
  }

  get nearest(): Mount | undefined {
    return this.#nearest[0]?.mount;
  }

  get mounts(): readonly Mount[] {
    return [...[...this.#alone.values()].map((it) => it.mount), ...this.#nearest.map((it) => it.mount)];
  }
}
