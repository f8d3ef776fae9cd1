import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { nearest } from '../../src/studies/nearest.ts';
import type { Progress } from '../../src/studies/study.ts';

/** Runs a search over the values of a function that is good from 0 up, and counts the looks. */
function search(merits: readonly number[], everyOne = false) {
  let looks = 0;
  function* look(i: number): Generator<Progress, number, void> {
    looks++;
    yield { done: looks, of: looks };
    return merits[i] as number;
  }
  const run = nearest({
    values: merits.map((_, i) => i),
    look,
    isGood: (merit) => merit >= 0,
    merit: (merit) => merit,
    everyOne,
  });
  for (;;) {
    const step = run.next();
    if (step.done === true) return { found: step.value, looks };
  }
}

const first = (merits: readonly number[]): number | undefined => {
  const i = merits.findIndex((it) => it >= 0);
  return i < 0 ? undefined : i;
};

describe('nearest', () => {
  it('finds nothing among nothing, or where nothing is good', () => {
    expect(search([]).found).toBeUndefined();
    expect(search(Array.from({ length: 200 }, (_, i) => -1 - i)).found).toBeUndefined();
  });

  it('finds the first good value on a slope, with fewer looks than there are values', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 400 }), fc.integer({ min: 0, max: 420 }), (length, from) => {
        const merits = Array.from({ length }, (_, i) => i - from);
        const { found, looks } = search(merits);
        expect(found).toBe(first(merits));
        expect(looks).toBeLessThanOrEqual(24 + 2 * Math.ceil(length / 24) + 6);
      }),
    );
  });

  it('finds the near end of a hill that rises above nought for a single value', () => {
    fc.assert(
      fc.property(fc.integer({ min: 30, max: 400 }), fc.integer({ min: 0, max: 399 }), (length, top) => {
        fc.pre(top < length);
        const merits = Array.from({ length }, (_, i) => -Math.abs(i - top));
        expect(search(merits).found).toBe(top);
      }),
    );
  });

  it('finds any good value when every one is looked at', () => {
    fc.assert(
      fc.property(fc.array(fc.constantFrom(-1, 1), { maxLength: 300 }), (merits) => {
        expect(search(merits, true).found).toBe(first(merits));
      }),
    );
  });
});
