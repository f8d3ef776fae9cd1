import { describe, expect, it } from 'vitest';
import { contoursInRows, type Field, type Place } from '../../../src/studies/map/contours.ts';
import { finish } from '../../../src/studies/study.ts';

const contours = (...given: Parameters<typeof contoursInRows>): Place[][] => finish(contoursInRows(...given));

const spread = (count: number): number[] =>
  Array.from({ length: count }, (_, i) => -2 + (4 * i) / (count - 1));

const field = (count: number, f: (x: number, y: number) => number): Field => {
  const places = spread(count);
  return { xs: places, ys: places, at: (i, j) => f(places[i] as number, places[j] as number) };
};

const length = (line: readonly Place[]): number =>
  line.slice(1).reduce((sum, { x, y }, i) => {
    const before = line[i] as Place;
    return sum + Math.hypot(x - before.x, y - before.y);
  }, 0);

describe('contours', () => {
  it('of a cone are circles: one closed line, the right length and place', () => {
    const lines = contours(
      field(81, (x, y) => Math.hypot(x, y)),
      1.23,
    );
    expect(lines).toHaveLength(1);
    const [line] = lines as [Place[]];
    expect(line[0]).toEqual(line.at(-1));
    expect(length(line)).toBeCloseTo(2 * Math.PI * 1.23, 2);
    for (const { x, y } of line) expect(Math.abs(Math.hypot(x, y) - 1.23)).toBeLessThan(1e-3);
  });

  it('of a plane are straight, from side to side, and exact', () => {
    const lines = contours(
      field(7, (x, y) => 2 * x + y),
      0.5,
    );
    expect(lines).toHaveLength(1);
    const [line] = lines as [Place[]];
    for (const { x, y } of line) expect(2 * x + y).toBeCloseTo(0.5, 12);
    // From (1.25, −2) to (−0.75, 2).
    expect(length(line)).toBeCloseTo(Math.hypot(2, 4), 12);
  });

  it('of a saddle part on the side where its middle stands', () => {
    const saddle = (x: number, y: number): number => x * y;
    const high = contours({ xs: [-1, 2], ys: [-1, 2], at: (i, j) => saddle(3 * i - 1, 3 * j - 1) }, 0);
    expect(high).toHaveLength(2);
    // The middle, (1 − 2 − 2 + 4)/4, stands above 0: the two corners below it are cut off.
    for (const line of high) for (const { x, y } of line) expect(Math.abs(x - y)).toBeGreaterThan(0.9);
    const low = contours({ xs: [-2, 1], ys: [-1, 2], at: (i, j) => saddle(3 * i - 2, 3 * j - 1) }, 0);
    expect(low).toHaveLength(2);
    for (const line of low) for (const { x, y } of line) expect(Math.abs(x + y)).toBeGreaterThan(0.9);
  });

  it('leave out what has no number, and close no line across it', () => {
    const lines = contours(
      field(41, (x, y) => (x > 0.5 ? Number.NaN : Math.hypot(x, y))),
      1,
    );
    expect(lines).toHaveLength(1);
    const [line] = lines as [Place[]];
    expect(line[0]).not.toEqual(line.at(-1));
    for (const { x } of line) expect(x).toBeLessThanOrEqual(0.5);
  });

  it('run upright where a whole number jumps', () => {
    const [line] = contours({ xs: [0, 1, 1, 2], ys: [0, 1], at: (i, j) => (i < 2 ? 0 : 0.5) + j }, 0.75) as [
      Place[],
    ];
    expect(line).toHaveLength(4);
    expect(length(line)).toBeCloseTo(2.5, 12);
  });
});
