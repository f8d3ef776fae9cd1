import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Judged, judge, leastRoom, type Named, type State } from '../../../src/calc/limits/judge.ts';
import { within } from '../within.ts';

const graded = { near: 10, applies: true, graded: true } as const;
const none = { room: undefined, ratio: undefined };

describe('one limit', () => {
  const table: readonly (readonly [string, Judged, State, number | undefined, number | undefined])[] = [
    ['well above a low bound', { ...graded, value: 75, low: 50 }, 'inside', 25, 0.5],
    ['as far from it as the band is wide', { ...graded, value: 60, low: 50 }, 'inside', 10, 0.2],
    ['within the band', { ...graded, value: 59, low: 50 }, 'near', 9, 0.18],
    ['on the bound', { ...graded, value: 50, low: 50 }, 'near', 0, 0],
    ['outside it', { ...graded, value: 45, low: 50 }, 'outside', -5, -0.1],
    ['below a high bound', { ...graded, value: 0.8, high: 1, near: 0.1 }, 'inside', 1 - 0.8, 1 - 0.8],
    ['outside a high bound', { ...graded, value: 1.5, high: 1, near: 0.1 }, 'outside', -0.5, -0.5],
    ['between two bounds, nearer the low', { ...graded, value: 90, low: 50, high: 250 }, 'inside', 40, 0.2],
    ['between two bounds, nearer the high', { ...graded, value: 245, low: 50, high: 250 }, 'near', 5, 0.025],
    [
      'so far from a bound that the room is no number',
      { ...graded, value: -1.7e308, low: 1.7e308 },
      'no answer',
      undefined,
      undefined,
    ],
    ['without a value', { ...graded, value: undefined, low: 50 }, 'no answer', undefined, undefined],
    [
      'with a low bound that is none',
      { ...graded, value: 75, low: Number.NaN },
      'no answer',
      undefined,
      undefined,
    ],
    [
      'with a high bound that is none',
      { ...graded, value: 75, high: Number.NaN },
      'no answer',
      undefined,
      undefined,
    ],
    [
      'a length that must exist and is short',
      { ...graded, value: 0.5, high: 50, mustExist: true },
      'inside',
      49.5,
      0.99,
    ],
    ['outside the high of two bounds', { ...graded, value: 260, low: 50, high: 250 }, 'outside', -10, -0.05],
    ['outside the low of two bounds', { ...graded, value: 40, low: 50, high: 250 }, 'outside', -10, -0.05],
    ['a bound of 0 measures over 100', { ...graded, value: 25, low: 0 }, 'inside', 25, 0.25],
    ['a negative bound measures over its size', { ...graded, value: 0, low: -50 }, 'inside', 50, 1],
    ['bounds that meet measure over 100', { ...graded, value: -2, low: 0, high: 0 }, 'outside', -2, -0.02],
    [
      'on a bound that is itself outside',
      { ...graded, value: 0, low: 0, lowIsOutside: true },
      'outside',
      0,
      0,
    ],
    ['a hair above such a bound', { ...graded, value: 0.5, low: 0, lowIsOutside: true }, 'near', 0.5, 0.005],
    [
      'a length that must exist and does',
      { ...graded, value: 300, high: 400, mustExist: true },
      'inside',
      100,
      0.25,
    ],
    [
      'a length of 0 that must exist',
      { ...graded, value: 0, high: 400, mustExist: true },
      'outside',
      undefined,
      undefined,
    ],
    ['a negative one', { ...graded, value: -9, high: 400, mustExist: true }, 'outside', undefined, undefined],
    ['a yes', { ...graded, value: 1, low: 1, near: 0, graded: false }, 'inside', undefined, undefined],
    ['a no', { ...graded, value: 0, low: 1, near: 0, graded: false }, 'outside', undefined, undefined],
    ['no value', { ...graded, value: undefined, low: 50 }, 'no answer', undefined, undefined],
    ['no low bound to be had', { ...graded, value: 75, low: Number.NaN }, 'no answer', undefined, undefined],
    [
      'no high bound to be had',
      { ...graded, value: 75, low: 50, high: Number.NaN },
      'no answer',
      undefined,
      undefined,
    ],
    [
      'no telling whether it applies',
      { ...graded, value: 75, low: 50, applies: undefined },
      'no answer',
      undefined,
      undefined,
    ],
    [
      'a limit that does not apply',
      { ...graded, value: 45, low: 50, applies: false },
      'does not apply',
      undefined,
      undefined,
    ],
    [
      'the same without a value',
      { ...graded, value: undefined, low: 50, applies: false },
      'does not apply',
      undefined,
      undefined,
    ],
  ];

  it.each(table)('%s', (_, judged, state, room, ratio) => {
    const verdict = judge(judged);
    expect(verdict.state).toBe(state);
    if (room === undefined) expect(verdict.room).toBeUndefined();
    else expect(verdict.room).toBeCloseTo(room, 12);
    if (ratio === undefined) expect(verdict.ratio).toBeUndefined();
    else expect(verdict.ratio).toBeCloseTo(ratio, 12);
  });

  const finite = within(-1e4, 1e4);
  const maybe = <T>(it: fc.Arbitrary<T>) => fc.option(it, { nil: undefined });
  const anyJudged: fc.Arbitrary<Judged> = fc
    .record({
      value: maybe(finite),
      bounds: fc.tuple(finite, finite, fc.constantFrom('low', 'high', 'both')),
      near: within(0, 50),
      applies: maybe(fc.boolean()),
      graded: fc.boolean(),
      mustExist: fc.boolean(),
      lowIsOutside: fc.boolean(),
      broken: fc.constantFrom('neither', 'neither', 'neither', 'low', 'high'),
    })
    .map(({ bounds: [a, b, which], broken, ...rest }) => ({
      ...rest,
      low: which === 'high' ? undefined : broken === 'low' ? Number.NaN : Math.min(a, b),
      high: which === 'low' ? undefined : broken === 'high' ? Number.NaN : Math.max(a, b),
    }));

  it('is never inside or near without value, bounds and a yes to whether it applies', () => {
    fc.assert(
      fc.property(anyJudged, (it) => {
        const { state } = judge(it);
        if (state !== 'inside' && state !== 'near') return;
        expect(it.applies).toBe(true);
        expect(it.value).toBeTypeOf('number');
        expect(Number.isNaN(it.low) || Number.isNaN(it.high)).toBe(false);
        expect(it.low === undefined || (it.value as number) >= it.low).toBe(true);
        expect(it.high === undefined || (it.value as number) <= it.high).toBe(true);
      }),
      { numRuns: 1000 },
    );
  });

  it('has a room whose sign goes with its state, and a ratio whose sign goes with the room', () => {
    fc.assert(
      fc.property(anyJudged, (it) => {
        const { state, room, ratio } = judge(it);
        if (room === undefined || ratio === undefined) {
          expect([room, ratio]).toEqual([undefined, undefined]);
          return;
        }
        expect(it.graded).toBe(true);
        expect(Math.sign(ratio)).toBe(Math.sign(room));
        if (state === 'near') expect(room < it.near && room >= 0).toBe(true);
        if (state === 'inside') expect(room).toBeGreaterThanOrEqual(it.near);
        if (state === 'outside') expect(room).toBeLessThanOrEqual(0);
      }),
      { numRuns: 1000 },
    );
  });

  it('never gets worse as the value moves away from its only bound', () => {
    const rank: Readonly<Record<State, number>> = {
      outside: 0,
      near: 1,
      inside: 2,
      'no answer': 3,
      'does not apply': 4,
    };
    fc.assert(
      fc.property(finite, finite, within(0, 1000), (value, low, more) => {
        const at = (it: number) => judge({ ...graded, value: it, low });
        expect(rank[at(value + more).state]).toBeGreaterThanOrEqual(rank[at(value).state]);
        expect(at(value + more).room).toBeGreaterThanOrEqual(at(value).room as number);
      }),
    );
  });
});

describe('the least room', () => {
  const of = (name: string, state: State, ratio: number | undefined): Named => ({
    name,
    verdict: { ...none, state, ratio },
  });

  it('is the smallest ratio, and names its limit', () => {
    const limits = [of('a', 'inside', 0.4), of('b', 'near', 0.02), of('c', 'inside', 2)];
    expect(leastRoom(limits)).toEqual({ name: 'b', value: 0.02 });
  });

  it('counts a limit that is outside without room as −1', () => {
    expect(leastRoom([of('a', 'outside', -0.3), of('b', 'outside', undefined)])).toEqual({
      name: 'b',
      value: -1,
    });
    expect(leastRoom([of('a', 'outside', -1.3), of('b', 'outside', undefined)])).toEqual({
      name: 'a',
      value: -1.3,
    });
  });

  it('leaves out what does not apply, has no answer, or is a yes', () => {
    const limits = [
      of('a', 'does not apply', undefined),
      of('b', 'no answer', undefined),
      of('c', 'inside', undefined),
    ];
    expect(leastRoom(limits)).toBeUndefined();
    expect(leastRoom([...limits, of('d', 'inside', 3)])).toEqual({ name: 'd', value: 3 });
    expect(leastRoom([])).toBeUndefined();
  });

  it('names the first of equals', () => {
    expect(leastRoom([of('a', 'inside', 0.5), of('b', 'inside', 0.5)])?.name).toBe('a');
  });
});
