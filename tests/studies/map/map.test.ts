import { describe, expect, it } from 'vitest';
import { MapReader } from '../../../src/studies/map/look-at.ts';
import { map } from '../../../src/studies/map/map.ts';
import { finish } from '../../../src/studies/study.ts';
import type { PlainLimit } from '../plain-evaluator.ts';
import { plainAsk, plainEvaluators } from './plain-map.ts';

/** Holds inside a circle of radius 1 round the origin; its room ratio is 1 − r². */
const CIRCLE: PlainLimit = { name: 'circle', of: (at) => at('x') ** 2 + at('y') ** 2, high: 1 };

describe('a map', () => {
  it('knows how much of a picture holds: a circle in a square', () => {
    const { share } = finish(map(plainEvaluators([CIRCLE]), plainAsk({ fineness: 101 })));
    expect(share).toBeCloseTo(Math.PI / 16, 3);
  });

  it('counts each whole number as one column, and holds exactly where a straight limit does', () => {
    const limit: PlainLimit = { name: 'slope', of: (at) => at('y') - at('x'), low: 0 };
    const x = { input: 'x', low: 0, high: 3, present: 0, whole: true, grain: 1 };
    const y = { input: 'y', low: 0, high: 4, present: 0, whole: false, grain: 1 };
    // Columns 0 to 3 hold above y = 0, 1, 2, 3: 4 + 3 + 2 + 1 of 16.
    const mapped = finish(map(plainEvaluators([limit]), plainAsk({ x, y, fineness: 5 })));
    expect([...mapped.xs]).toEqual([0, 1, 2, 3]);
    expect(mapped.share).toBeCloseTo(10 / 16, 12);
    expect(mapped.widest).toMatchObject({ x: 0, y: 4, room: 0.04 });
  });

  it('finds the spot with the most room between the points of its grid', () => {
    const of = (name: string, f: PlainLimit['of']): PlainLimit => ({ name, of: f, low: -1 });
    // Three planes, −0.3 − x, x − 2y and 3y − 0.2 as seen from a bound of −1: their least is largest where all meet.
    const limits = [
      of('a', (at) => -0.3 - at('x')),
      of('b', (at) => at('x') - 2 * at('y')),
      of('c', (at) => 3 * at('y') - 0.2),
    ];
    // −0.3 − x = x − 2y = 3y − 0.2: 5y = x + 0.2 and 2x = 2y − 0.3, so y = 0.0125, x = −0.1375.
    const { widest } = finish(map(plainEvaluators(limits), plainAsk({ fineness: 12 })));
    expect(widest?.x).toBeCloseTo(-0.1375, 2);
    expect(widest?.y).toBeCloseTo(0.0125, 2);
    expect(widest?.room).toBeGreaterThan(0.8375 - 0.004);
    expect(widest?.room).toBeLessThanOrEqual(0.8375);
  });

  it('finds the higher of two peaks, the lower one nearer a point of the grid', () => {
    const peak = (x: number, height: number, at: number): number => height - 40 * Math.abs(at - x);
    const two: PlainLimit = {
      name: 'two',
      of: (at) => Math.max(peak(-1, 2, at('x')), peak(1.05, 2.5, at('x'))) - Math.abs(at('y')),
      low: 1,
    };
    const { widest } = finish(map(plainEvaluators([two]), plainAsk({ fineness: 21 })));
    expect(widest).toMatchObject({ x: 1.05, y: 0 });
    expect(widest?.room).toBeCloseTo(1.5, 9);
  });

  it('takes the middle of a level ridge: the spot where the next limit has most room', () => {
    const flat: PlainLimit = { name: 'flat', of: (at) => 0.9 + Math.abs(at('x')), high: 1 };
    const upper: PlainLimit = { name: 'upper', of: (at) => at('y'), high: 1.5 };
    const lower: PlainLimit = { name: 'lower', of: (at) => at('y'), low: -0.5 };
    // The next limits have 1 − y/1.5 and 1 + 2y of room: most where both are 1, at y = 0.
    const { widest } = finish(map(plainEvaluators([flat, upper, lower]), plainAsk({ fineness: 14 })));
    expect(widest).toMatchObject({ x: 0, limit: 'flat' });
    expect(widest?.y).toBeCloseTo(0, 2);
  });

  it('says which limit is furthest outside, and where', () => {
    const left: PlainLimit = { name: 'left', of: (at) => at('x'), low: -1 };
    const low: PlainLimit = { name: 'low', of: (at) => at('y'), low: -1 };
    const never: PlainLimit = { name: 'never outside', of: () => 0, high: 1 };
    const mapped = finish(map(plainEvaluators([left, low, never]), plainAsk()));
    expect(mapped.limits.map((it) => it.name)).toEqual(['left', 'low']);
    const reader = new MapReader(mapped);
    expect(reader.ground(0, 0)).toEqual({ is: 'allowed' });
    expect(reader.ground(-1.01, 0)).toEqual({ is: 'failing', limit: 'left', more: 0 });
    expect(reader.ground(-1.51, -1.2)).toEqual({ is: 'failing', limit: 'left', more: 1 });
    expect(reader.ground(-1.2, -1.51)).toEqual({ is: 'failing', limit: 'low', more: 1 });
  });

  it('counts a limit without an answer as failing, and one that does not apply as no limit', () => {
    const half: PlainLimit = { name: 'half', of: (at) => (at('x') < 0 ? null : 0.5), high: 1 };
    const other: PlainLimit = { name: 'other', of: () => 9, high: 1, applies: (at) => at('y') > 9 };
    const mapped = finish(map(plainEvaluators([half, other]), plainAsk({ fineness: 201 })));
    expect(mapped.limits.map((it) => it.name)).toEqual(['half']);
    expect(mapped.share).toBeCloseTo(0.5, 2);
    expect(mapped.widest?.room).toBe(0.5);
  });

  it('refuses two sides of one input, and ends the wrong way round, in a sentence', () => {
    const { x } = plainAsk();
    expect(() => finish(map(plainEvaluators([CIRCLE]), plainAsk({ y: x })))).toThrow(
      'A map varies two inputs; x was given for both.',
    );
    expect(() => finish(map(plainEvaluators([CIRCLE]), plainAsk({ x: { ...x, low: 3 } })))).toThrow(
      'from 3 to 2',
    );
  });
});
