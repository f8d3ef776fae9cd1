import type { Given } from '../../../src/calc/record.ts';

/** Random figures that are the same in every run: a linear congruential generator (Numerical Recipes' constants). */
export class Draw {
  #state: number;

  constructor(seed: number) {
    this.#state = seed >>> 0;
  }

  /** From 0 to 1. */
  share(): number {
    this.#state = (Math.imul(this.#state, 1664525) + 1013904223) >>> 0;
    return this.#state / 2 ** 32;
  }

  between(low: number, high: number): number {
    return low + (high - low) * this.share();
  }

  whole(low: number, high: number): number {
    return low + Math.floor((high - low + 1) * this.share());
  }

  one<const T>(of: readonly T[]): T {
    return of[this.whole(0, of.length - 1)] as T;
  }

  /** So many figures in a row. */
  many<T>(count: number, make: (i: number) => T): T[] {
    return Array.from({ length: count }, (_, i) => make(i));
  }
}

/**
 * A library function worked out once more by another road, from what it means and not from its code: what is put in, drawn
 * at random with no figure 0 or 1 that would hide a term, and the answer; null where there can be none.
 */
export interface Apart {
  readonly id: string;
  /** By which road. */
  readonly road: string;
  readonly draw: (it: Draw) => readonly Given[];
  // biome-ignore lint/suspicious/noExplicitAny: each takes the figures that its own draw gives
  readonly answer: (...given: any[]) => number | null;
  /** Share of the answer that the two may differ by, and as much in the answer's unit. */
  readonly within?: number;
  /** What the other road may be off besides, in the answer's unit. */
  readonly slack?: number;
  readonly runs?: number;
}
