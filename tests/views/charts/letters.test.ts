import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { apart } from '../../../src/views/charts/letters.ts';

const at = (...all: number[]) => all.map((it, i) => ({ text: String(i), at: it }));

describe('apart', () => {
  it('leaves letterings where they are when they do not meet', () => {
    expect(apart(at(50, 10), 14, 0, 100).map((it) => [it.text, it.placed])).toEqual([
      ['1', 10],
      ['0', 50],
    ]);
  });

  it('moves those that meet apart', () => {
    expect(apart(at(50, 52), 14, 0, 100).map((it) => it.placed)).toEqual([50, 64]);
    expect(apart(at(98, 99), 14, 0, 100).map((it) => it.placed)).toEqual([86, 100]);
  });

  it('keeps all inside and apart as long as there is room', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: -50, max: 250, noNaN: true }), { maxLength: 8 }), (places) => {
        const placed = apart(at(...places), 14, 0, 200).map((it) => it.placed);
        for (const [i, it] of placed.entries()) {
          expect(it).toBeGreaterThanOrEqual(-1e-9);
          expect(it).toBeLessThanOrEqual(200 + 1e-9);
          if (i > 0) expect(it - (placed[i - 1] as number)).toBeGreaterThanOrEqual(14 - 1e-9);
        }
      }),
    );
  });
});
