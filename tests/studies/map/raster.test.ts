import { describe, expect, it } from 'vitest';
import { edgesInRows, levelLinesInRows } from '../../../src/studies/map/edges.ts';
import { MapReader } from '../../../src/studies/map/look-at.ts';
import { map } from '../../../src/studies/map/map.ts';
import { ALLOWED, rasterInRows } from '../../../src/studies/map/raster.ts';
import { finish } from '../../../src/studies/study.ts';
import type { PlainLimit } from '../plain-evaluator.ts';
import { plainAsk, plainEvaluators } from './plain-map.ts';

const CIRCLE: PlainLimit = { name: 'circle', of: (at) => at('x') ** 2 + at('y') ** 2, high: 1 };
const SLOPE: PlainLimit = { name: 'slope', of: (at) => at('y') - at('x'), low: -0.7 };

const mapped = finish(map(plainEvaluators([CIRCLE, SLOPE]), plainAsk({ fineness: 37, results: ['circle'] })));

describe('a map as picture elements', () => {
  it('shows at every element what is read off the map there', () => {
    const { ground } = finish(rasterInRows(mapped, 90, 70));
    const reader = new MapReader(mapped);
    for (let row = 0; row < 70; row++) {
      for (let column = 0; column < 90; column++) {
        const [x, y] = [-2 + (4 * (column + 0.5)) / 90, 2 - (4 * (row + 0.5)) / 70];
        const there = reader.ground(x, y);
        const limit = mapped.limits[(ground[row * 90 + column] as number) - 1]?.name;
        expect(limit, `${x} ${y}`).toBe(there.is === 'failing' ? there.limit : undefined);
      }
    }
  });

  it('shows as much allowed ground as the map says holds', () => {
    const { ground } = finish(rasterInRows(mapped, 400, 400));
    const allowed = ground.filter((it) => it === ALLOWED).length / ground.length;
    expect(allowed).toBeCloseTo(mapped.share, 2);
  });

  it('stands in upright strips where one side is a whole number', () => {
    const x = { input: 'x', low: -1, high: 1, present: 0, whole: true, grain: 1 };
    const steps = finish(map(plainEvaluators([SLOPE]), plainAsk({ x, fineness: 9 })));
    const { ground } = finish(rasterInRows(steps, 30, 40));
    const highest = [0, 1, 2].map((strip) => {
      const column = Array.from({ length: 40 }, (_, row) => ground[row * 30 + strip * 10 + 5]);
      for (let q = 0; q < 10; q++) {
        expect(Array.from({ length: 40 }, (_, row) => ground[row * 30 + strip * 10 + q])).toEqual(column);
      }
      return column.indexOf(1);
    });
    // y ≥ x − 0.7 at −1, 0 and 1: the forbidden ground begins 3.7, 2.7 and 1.7 of 4 below the top.
    expect(highest).toEqual([37, 27, 17]);
  });
});

describe('edges of a map', () => {
  it('run where the nearest limit turns, corners kept', () => {
    for (const { x, y } of finish(edgesInRows(mapped)).flat()) {
      const [circle, slope] = [1 - x * x - y * y, y - x + 0.7];
      expect(Math.abs(Math.min(circle, slope))).toBeLessThan(0.02);
    }
    expect(finish(edgesInRows(mapped))).toHaveLength(1);
  });
});

describe('contours of a result', () => {
  it('run where the result stands at the level', () => {
    const lines = finish(levelLinesInRows(mapped, 0, 0.5));
    expect(lines).toHaveLength(1);
    for (const { x, y } of lines.flat()) expect(x * x + y * y).toBeCloseTo(0.5, 2);
  });
});
