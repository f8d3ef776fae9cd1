import { describe, expect, it } from 'vitest';
import { drawMark, type MarkInput } from '../../src/drawings/mark.ts';

const mark = (over: Partial<MarkInput>) =>
  drawMark({ state: 'inside', value: 60, low: 50, high: null, roomRatio: 0.2, ...over }, 'board').primitives;

const ringX = (over: Partial<MarkInput>): number | undefined => {
  const ring = mark(over).find((it) => it.kind === 'circle');
  return ring?.kind === 'circle' ? ring.cx : undefined;
};
const squareMiddle = (over: Partial<MarkInput>): number | undefined => {
  const square = mark(over).find((it) => it.kind === 'rect');
  return square?.kind === 'rect' ? square.x + square.width / 2 : undefined;
};

describe('the limit mark', () => {
  it('stands the ring at 24 + 28ρ/(ρ + ½) from a single low jaw, mirrored from a high one', () => {
    expect(ringX({ roomRatio: 0 })).toBe(24);
    expect(ringX({ roomRatio: 0.5 })).toBe(38);
    expect(ringX({ low: null, high: 75, roomRatio: 0.5 })).toBe(64 - 38);
  });

  it('stands it by share of the span between two jaws', () => {
    expect(ringX({ value: 150, low: 50, high: 250 })).toBe(32);
    expect(ringX({ value: 100, low: 50, high: 250 })).toBe(24);
  });

  it('touches the jaw it is near with a half-filled ring', () => {
    expect(ringX({ state: 'near' })).toBe(22.5);
    expect(ringX({ state: 'near', value: 248, low: 50, high: 250 })).toBe(41.5);
    expect(mark({ state: 'near' }).some((it) => it.role === 'peg-half')).toBe(true);
    expect(mark({}).some((it) => it.role === 'peg-half')).toBe(false);
  });

  it('leaves nothing in the slot when outside: a square outside the jaw', () => {
    expect(squareMiddle({ state: 'outside', value: 40 })).toBe(7.5);
    expect(squareMiddle({ state: 'outside', value: 260, low: 50, high: 250 })).toBe(56.5);
    expect(ringX({ state: 'outside', value: 40 })).toBeUndefined();
  });

  it('has no peg and dashed lines without an answer', () => {
    const drawn = mark({ state: 'no answer', value: null, roomRatio: null });
    expect(drawn.some((it) => it.kind !== 'path')).toBe(false);
    expect(drawn.filter((it) => it.role === 'slot-dashed' || it.role === 'jaw-dashed')).toHaveLength(2);
  });

  it('threads a yes on its one jaw and sets a no beside it', () => {
    const yesNo = { low: null, high: null, value: null, roomRatio: null };
    expect(ringX(yesNo)).toBe(32);
    expect(squareMiddle({ ...yesNo, state: 'outside' })).toBe(50);
  });

  it('is 42 by 13 in a cell', () => {
    const cell = drawMark({ state: 'outside', value: 260, low: 50, high: 250, roomRatio: -0.1 }, 'cell');
    expect([cell.width, cell.height]).toEqual([42, 13]);
    const square = cell.primitives.find((it) => it.kind === 'rect');
    expect(square?.kind === 'rect' ? square.x + square.width : 99).toBeLessThanOrEqual(42);
  });
});
