import { describe, expect, it } from 'vitest';
import { OVERLAP, tilesOf } from '../../../src/sheets/template/tiles.ts';

const WINDOW = { width: 175, height: 200 };

describe('pieces of a template', () => {
  it('are one, in the middle, when it fits', () => {
    const tiles = tilesOf({ x0: -60, y0: 10, width: 120, height: 80 }, WINDOW);
    expect(tiles).toEqual([
      { across: 1, down: 1, ofAcross: 1, ofDown: 1, x0: -87.5, x1: 87.5, y0: -50, y1: 150 },
    ]);
  });

  it.each([
    [176, 100, 2, 1],
    [330, 100, 2, 1],
    [331, 380, 3, 2],
    [900, 900, 6, 5],
  ])('cover %s × %s with %s × %s pages, each seam shown on both sides of it', (width, height, wide, tall) => {
    const tiles = tilesOf({ x0: 7, y0: -3, width, height }, WINDOW);
    expect(tiles).toHaveLength(wide * tall);
    for (const it of tiles) {
      expect(it.x1 - it.x0).toBeCloseTo(WINDOW.width, 9);
      expect(it.y1 - it.y0).toBeCloseTo(WINDOW.height, 9);
      const right = tiles.find((other) => other.across === it.across + 1 && other.down === it.down);
      if (right !== undefined) expect(it.x1 - right.x0).toBeCloseTo(2 * OVERLAP, 9);
      const below = tiles.find((other) => other.down === it.down + 1 && other.across === it.across);
      if (below !== undefined) expect(below.y1 - it.y0).toBeCloseTo(2 * OVERLAP, 9);
    }
    expect(Math.min(...tiles.map((it) => it.x0))).toBeLessThanOrEqual(7);
    expect(Math.max(...tiles.map((it) => it.x1))).toBeGreaterThanOrEqual(7 + width);
    expect(Math.min(...tiles.map((it) => it.y0))).toBeLessThanOrEqual(-3);
    expect(Math.max(...tiles.map((it) => it.y1))).toBeGreaterThanOrEqual(-3 + height);
  });
});
