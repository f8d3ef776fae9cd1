import { describe, expect, it } from 'vitest';
import { hatchLines } from '../../../src/drawings/layout/hatch-lines.ts';

const square = [
  { x: 10, y: 10 },
  { x: 50, y: 10 },
  { x: 50, y: 50 },
  { x: 10, y: 50 },
];

const lines = (d: string): number[][] =>
  [...d.matchAll(/M([-\d.]+) ([-\d.]+)L([-\d.]+) ([-\d.]+)/g)].map((it) => it.slice(1).map(Number));

describe('hatchLines', () => {
  it('draws 45° lines that stay inside', () => {
    const drawn = lines(hatchLines(square, false));
    expect(drawn.length).toBeGreaterThan(8);
    for (const [ax = 0, ay = 0, bx = 0, by = 0] of drawn) {
      expect(Math.abs(by - ay)).toBeCloseTo(Math.abs(bx - ax), 1);
      for (const value of [ax, ay, bx, by]) {
        expect(value).toBeGreaterThanOrEqual(10);
        expect(value).toBeLessThanOrEqual(50);
      }
    }
  });

  it('leans the other way when asked to', () => {
    const [first] = lines(hatchLines(square, false)).slice(5);
    const [other] = lines(hatchLines(square, true)).slice(5);
    const slope = ([ax = 0, ay = 0, bx = 0, by = 0]: number[]): number => (by - ay) / (bx - ax);
    expect(slope(first ?? [])).toBeCloseTo(-1, 1);
    expect(slope(other ?? [])).toBeCloseTo(1, 1);
  });
});
