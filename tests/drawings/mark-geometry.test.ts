import { describe, expect, it } from 'vitest';
import { judge } from '../../src/calc/limits/judge.ts';
import { type Marked, markGeometry } from '../../src/drawings/mark-geometry.ts';

const marked = (value: number, low?: number, high?: number, near = 10, graded = true): Marked => {
  const { state, ratio } = judge({ value, low, high, near, applies: true, graded });
  return { state, ratio, value, low, high, graded };
};

// The expected places are those of look.md, "The limit mark".
describe('the limit mark', () => {
  it('puts the low jaw at 16 and the high one at 48, with an open arrow on a side without a bound', () => {
    expect(markGeometry(marked(80, 50))).toMatchObject({ jaws: [16], arrows: ['right'], slot: [16, 60] });
    expect(markGeometry(marked(80, undefined, 90))).toMatchObject({
      jaws: [48],
      arrows: ['left'],
      slot: [4, 48],
    });
    expect(markGeometry(marked(80, 50, 150))).toMatchObject({ jaws: [16, 48], arrows: [], slot: [16, 48] });
  });

  it('lets an open ring stand where the value stands', () => {
    expect(markGeometry(marked(100, 50, 150)).peg).toEqual({ form: 'ring', x: 32 });
    // A room of half the bound: 24 + 28·0.5/(0.5 + 0.5).
    expect(markGeometry(marked(75, 50)).peg).toEqual({ form: 'ring', x: 38 });
    expect(markGeometry(marked(25, undefined, 50)).peg).toEqual({ form: 'ring', x: 26 });
  });

  it('keeps a ring that is inside clear of its jaws', () => {
    expect(markGeometry(marked(60.1, 50, 1050)).peg).toEqual({ form: 'ring', x: 24 });
    expect(markGeometry(marked(1039, 50, 1050)).peg).toEqual({ form: 'ring', x: 40 });
  });

  it('fills the half next to the jaw that is near', () => {
    expect(markGeometry(marked(55, 50)).peg).toEqual({ form: 'near', x: 22.5, filled: 'left' });
    expect(markGeometry(marked(145, 50, 150)).peg).toEqual({ form: 'near', x: 41.5, filled: 'right' });
    expect(markGeometry(marked(50, 50)).peg).toEqual({ form: 'near', x: 22.5, filled: 'left' });
  });

  it('puts a square outside the jaw that is passed and leaves nothing in the slot', () => {
    expect(markGeometry(marked(44.7, 50)).peg).toEqual({ form: 'square', x: 7.5 });
    expect(markGeometry(marked(1.2, undefined, 1, 0.1)).peg).toEqual({ form: 'square', x: 56.5 });
    expect(markGeometry(marked(20, 50, 150)).peg).toEqual({ form: 'square', x: 7.5 });
    expect(markGeometry(marked(200, 50, 150)).peg).toEqual({ form: 'square', x: 56.5 });
  });

  it('puts a length that does not exist outside a low jaw at nothing', () => {
    const it = markGeometry({
      state: 'outside',
      ratio: undefined,
      value: -4,
      low: undefined,
      high: 800,
      graded: true,
    });
    expect(it).toMatchObject({ jaws: [16, 48], peg: { form: 'square', x: 7.5 } });
  });

  it('dashes slot and jaws where there is no answer, with no peg', () => {
    const it = markGeometry({
      state: 'no answer',
      ratio: undefined,
      value: undefined,
      low: 50,
      high: undefined,
      graded: true,
    });
    expect(it).toMatchObject({ dashed: true, jaws: [16], peg: undefined });
  });

  it('threads a ring on the one jaw of a yes or no, and sets a square aside', () => {
    expect(markGeometry(marked(1, 1, undefined, 0, false))).toMatchObject({
      jaws: [32],
      peg: { form: 'ring', x: 32 },
    });
    expect(markGeometry(marked(0, 1, undefined, 0, false))).toMatchObject({
      jaws: [32],
      peg: { form: 'square', x: 50 },
    });
  });

  it('never moves the peg the wrong way as room grows', () => {
    const xs = [0, 0.2, 0.5, 1, 2, 10, 1000].map((ratio) => {
      const { peg } = markGeometry({
        state: 'inside',
        ratio,
        value: 50 + 50 * ratio,
        low: 50,
        high: undefined,
        graded: true,
      });
      return peg?.x ?? Number.NaN;
    });
    expect([...xs].sort((a, b) => a - b)).toEqual(xs);
    expect(Math.min(...xs)).toBe(24);
    expect(Math.max(...xs)).toBeLessThan(52);
  });
});
