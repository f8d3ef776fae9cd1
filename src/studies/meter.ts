import type { Progress } from './study.ts';

/** Counts a study's evaluations. What is still to come is added as it becomes known. */
export class Meter {
  #done = 0;
  #of = 0;

  expect(count: number): void {
    this.#of += count;
  }

  did(count: number): Progress {
    this.#done += count;
    return { done: this.#done, of: Math.max(this.#done, this.#of) };
  }
}
