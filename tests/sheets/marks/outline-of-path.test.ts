import { describe, expect, it } from 'vitest';
import { moved, outlineOfPath } from '../../../src/sheets/marks/outline-of-path.ts';

/** Places along cubic curves, to see where a bow really runs. */
function along(d: string): (readonly [number, number])[] {
  let [x0, y0] = [0, 0];
  const places: (readonly [number, number])[] = [];
  for (const segment of outlineOfPath(d)) {
    if (segment[0] === 'Z') continue;
    const [x, y] = segment.slice(-2) as [number, number];
    if (segment[0] === 'C') {
      const [, ax, ay, bx, by] = segment;
      for (let t = 0.1; t < 1; t += 0.1) {
        const s = 1 - t;
        const cubic = (a: number, b: number, c: number, e: number): number =>
          s ** 3 * a + 3 * s * s * t * b + 3 * s * t * t * c + t ** 3 * e;
        places.push([cubic(x0, ax, bx, x), cubic(y0, ay, by, y)]);
      }
    }
    [x0, y0] = [x, y];
  }
  return places;
}

describe('outlineOfPath', () => {
  it('reads straight lines and moves them', () => {
    expect(moved(outlineOfPath('M1 2L3.5 -4Z'), 2, 10, 20)).toEqual([['M', 12, 24], ['L', 17, 12], ['Z']]);
  });

  // Where the four arcs between two places run: SVG 2, 9.5.1, the figure of large-arc and sweep.
  it.each([
    ['0 0', 10, 0, 'short, against the clock', 90],
    ['0 1', 0, 10, 'short, with the clock', 90],
    ['1 0', 0, 10, 'long, against the clock', 270],
    ['1 1', 10, 0, 'long, with the clock', 270],
  ])('keeps the arc with flags %s on its circle', (flags, cx, cy) => {
    const places = along(`M0 0A10 10 0 ${flags} 10 10`);
    expect(places.length).toBeGreaterThan(8);
    for (const [x, y] of places) expect(Math.hypot(x - cx, y - cy)).toBeCloseTo(10, 2);
  });

  it('refuses what it does not know', () => {
    expect(() => outlineOfPath('M0 0 3 3 L1 1')).toThrow(/where a command belongs/);
  });
});
