import type { Mount } from './ask.ts';

/** The mount that comes nearest to keeping every limit: at which the fewest fail, and of those fail by the least. */
export class NearestMiss {
  #best: { readonly mount: Mount; readonly failing: number; readonly violation: number } | undefined;

  put(mount: () => Mount, failing: readonly number[], violation: number): void {
    const best = this.#best;
    const fewer = best === undefined ? 1 : best.failing - failing.length;
    if (fewer < 0 || (fewer === 0 && best !== undefined && violation >= best.violation)) return;
    this.#best = { mount: mount(), failing: failing.length, violation };
  }

  get mount(): Mount | undefined {
    return this.#best?.mount;
  }
}
