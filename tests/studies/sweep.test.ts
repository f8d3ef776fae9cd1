import { describe, expect, it } from 'vitest';
import { finish } from '../../src/studies/study.ts';
import { type SweepAsk, sweep, trace } from '../../src/studies/sweep.ts';
import { caseEvaluator, casePlan } from './case-evaluator.ts';
import { type PlainLimit, plainEvaluator } from './plain-evaluator.ts';

const ask = (over: Partial<SweepAsk> = {}): SweepAsk => ({
  input: 'x',
  low: 0,
  high: 10,
  present: null,
  whole: false,
  points: 11,
  results: ['y'],
  ...over,
});

const swept = (limits: readonly PlainLimit[], over: Partial<SweepAsk> = {}) =>
  finish(sweep(plainEvaluator({ x: 3 }, limits), ask(over)));

const square: PlainLimit = { name: 'y', of: (input) => input('x') ** 2, high: 50, near: 5 };

describe('sweep', () => {
  it('looks at evenly spread values and at the present one exactly', () => {
    const { points } = swept([square], { present: 3.3 });
    expect(points.map((it) => it.x)).toEqual([0, 1, 2, 3, 3.3, 4, 5, 6, 7, 8, 9, 10]);
    expect(points.find((it) => it.x === 3.3)?.values).toEqual([3.3 ** 2]);
  });

  it('widens the range to a present value outside it', () => {
    expect(swept([square], { present: 12, points: 5 }).points.map((it) => it.x)).toEqual([0, 3, 6, 9, 12]);
  });

  it('finds where a square passes its bound, within a millionth of the range, on the side that holds', () => {
    const { turnings } = swept([square]);
    expect(turnings).toHaveLength(1);
    const [turning] = turnings;
    expect(turning).toMatchObject({ limit: 'y', from: 'holds', to: 'outside' });
    expect(turning?.at).toBeLessThanOrEqual(Math.sqrt(50));
    expect(Math.sqrt(50) - (turning?.at ?? 0)).toBeLessThanOrEqual(1e-5);
    expect((turning?.above ?? 0) - (turning?.below ?? 0)).toBeLessThanOrEqual(1e-5);
  });

  it('finds both ends of a window narrower than the points are apart', () => {
    const window: PlainLimit = { name: 'y', of: (input) => Math.abs(input('x') - 4.4), high: 0.05 };
    const { turnings } = swept([window]);
    expect(turnings.map((it) => it.to)).toEqual(['holds', 'outside']);
    expect(turnings[0]?.at).toBeCloseTo(4.35, 4);
    expect(turnings[1]?.at).toBeCloseTo(4.45, 4);
  });

  it('tells a limit without an answer, or that does not apply, from one that is outside', () => {
    const { turnings } = swept([
      { name: 'y', of: (input) => (input('x') < 2.5 ? null : input('x')), low: 5 },
      { name: 'z', of: () => 1, low: 5, applies: (input) => input('x') >= 7.25 },
    ]);
    expect(turnings.map(({ limit, from, to }) => [limit, from, to])).toEqual([
      ['y', 'no answer', 'outside'],
      ['y', 'outside', 'holds'],
      ['z', 'does not apply', 'outside'],
    ]);
    for (const [i, x] of [2.5, 5, 7.25].entries()) expect(turnings[i]?.at).toBeCloseTo(x, 4);
  });

  it('goes through a whole-number input step by step and names the first step that stands otherwise', () => {
    const { points, turnings } = swept([{ name: 'y', of: (input) => input('x') * 3, low: 10, high: 20 }], {
      whole: true,
      present: 3,
    });
    expect(points.map((it) => it.x)).toEqual([0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10]);
    expect(turnings.map(({ at, from, to }) => [at, from, to])).toEqual([
      [4, 'outside', 'holds'],
      [7, 'holds', 'outside'],
    ]);
  });

  it('keeps to listed values', () => {
    expect(swept([square], { whole: true, only: [8, 2, 4, 12] }).points.map((it) => it.x)).toEqual([2, 4, 8]);
  });

  it('yields after every evaluation, so that it can be stopped anywhere', () => {
    const evaluator = plainEvaluator({ x: 0 }, [square]);
    const study = sweep(evaluator, ask());
    for (let i = 1; i <= 5; i++) {
      expect(study.next().value).toMatchObject({ done: i });
      expect(evaluator.count()).toBe(i);
    }
  });

  it.each<[Partial<SweepAsk>, string]>([
    [{ low: 5, high: 5 }, 'A sweep from 5 to 5 was asked for: it must go from a number to a greater one.'],
    [{ points: 1 }, 'A sweep over 1 points was asked for: it needs 2 or more.'],
    [{ whole: true, high: 1000 }, 'A sweep over 1001 steps was asked for: at most 400 are allowed.'],
  ])('refuses %j in a sentence', (over, why) => {
    expect(() => swept([square], over)).toThrow(why);
  });
});

describe('trace', () => {
  it('lays the same values of several evaluators together', () => {
    const lines = finish(
      trace(
        [1, 2].map((factor) => plainEvaluator({ x: 0 }, [{ name: 'y', of: (input) => factor * input('x') }])),
        ask({ points: 3 }),
      ),
    );
    expect(lines.map((points) => points.map((it) => it.values[0]))).toEqual([
      [0, 5, 10],
      [0, 10, 20],
    ]);
  });
});

// The figures are those of the model's case, worked out apart from this program.
describe('sweeps of the case to start from', () => {
  const { evaluator } = caseEvaluator(casePlan({ shim_count: 3 }));

  it('the gap holds from 4 shims, the bolts fail from 5', () => {
    const result = finish(
      sweep(evaluator, {
        input: 'shim_count',
        low: 0,
        high: 10,
        present: 3,
        whole: true,
        points: 2,
        results: ['rudder_gap', 'bolt_utilisation'],
      }),
    );
    const at = (limit: string) => result.turnings.filter((it) => it.limit === limit);
    expect(at('rudder_gap')).toMatchObject([{ at: 4, from: 'outside', to: 'holds' }]);
    expect(at('bolt_utilisation')).toMatchObject([{ at: 5, from: 'holds', to: 'outside' }]);
    const values = (shims: number) => result.points.find((it) => it.x === shims)?.values ?? [];
    expect(values(3)[0]).toBeCloseTo(44.7009, 4);
    expect(values(4)[0]).toBeCloseTo(56.886, 4);
    expect(values(4)[1]).toBeCloseTo(0.9612, 4);
    expect(values(5)[1]).toBeCloseTo(1.0824, 4);
  });

  it('the upper bracket may go up to 868: at 860 the drive unit has 20 mm, at 900 it is 20 too long', () => {
    const result = finish(
      sweep(evaluator, {
        input: 'upper_bracket_height',
        low: 800,
        high: 900,
        present: 860,
        whole: false,
        points: 11,
        results: ['drive_headroom'],
      }),
    );
    const values = new Map(result.points.map((it) => [it.x, it.values[0]]));
    expect(values.get(860)).toBeCloseTo(20, 9);
    expect(values.get(900)).toBeCloseTo(-20, 9);
    const [turning, ...more] = result.turnings.filter((it) => it.limit === 'drive_headroom');
    // 100 + 1000 − 180 − 40 − 12, from the definitions.
    expect(turning?.at).toBeCloseTo(868, 3);
    expect(more).toEqual([]);
  });

  it('a value that cannot be has no answer and says why', () => {
    const result = finish(
      sweep(evaluator, {
        input: 'tube_wall',
        low: 2,
        high: 40,
        present: 3.9,
        whole: false,
        points: 20,
        results: ['tube_utilisation'],
      }),
    );
    const last = result.points.at(-1);
    expect(last?.values).toEqual([null]);
    expect(last?.refused).toContain('must');
    expect(last?.limits.every((it) => it.state === 'no answer')).toBe(true);
  });
});
