import { describe, expect, it } from 'vitest';
import { shares } from '../../../src/studies/drivers/shares.ts';
import type { Varied } from '../../../src/studies/drivers/varied.ts';
import { drivers } from '../../../src/studies/drivers.ts';
import { Meter } from '../../../src/studies/meter.ts';
import { finish } from '../../../src/studies/study.ts';
import { errorModel } from '../../../src/studies/uncertain/error-model.ts';
import { plainPoints } from '../plain-points.ts';
import { type Case, cantileverStress, cantileverTip, ishigami, sharesOfG, sobolG } from '../published.ts';

const varied = ({ errors }: Case): Varied[] => errors.map((it) => ({ ...it, whole: false }));

const ran = (of: Case, limits: readonly string[] = ['room'], share = 0, seed = 1) =>
  finish(drivers(plainPoints([of.limit]), { scenario: null, inputs: varied(of), limits, share, seed }))
    .limits[0];

const one = (name: string, value: number, over: Partial<Varied> = {}): Varied => ({
  name,
  value,
  offBy: 1,
  law: 'rectangular',
  whole: false,
  ...over,
});

const slopesAt = (
  of: (x: number) => number | null,
  at: number,
  over: Partial<Varied> = {},
  bound: { low?: number; high?: number } = { low: 0 },
) =>
  finish(
    drivers(plainPoints([{ name: 'room', of: ({ x = Number.NaN }) => of(x), ...bound }]), {
      scenario: null,
      inputs: [one('x', at, over)],
      limits: [],
      share: 0,
      seed: 1,
    }),
  ).limits[0]?.drivers[0]?.slope;

describe('slopes', () => {
  it.each([
    ['a root', (x: number) => Math.sqrt(x), 7, 0.5 / Math.sqrt(7)],
    ['a sine of a steep angle', (x: number) => Math.sin(x / 3), 20, Math.cos(20 / 3) / 3],
    ['a power', (x: number) => x ** 7, 1.3, 7 * 1.3 ** 6],
    ['a quotient', (x: number) => 1e6 / x, 888, -1e6 / 888 ** 2],
    ['a logarithm', (x: number) => 100 * Math.log(x), 0.02, 5000],
  ])('of %s are good to a millionth', (_, of, at, slope) => {
    const offBy = Math.abs(at) * 0.01;
    const found = slopesAt(of, at, { offBy });
    expect(found?.kink).toBe(false);
    expect(Math.abs((found?.right ?? 0) / slope - 1)).toBeLessThan(1e-9);
    expect(found?.left).toBe(found?.right);
  });

  it('differ from side to side at a kink, there alone', () => {
    const of = (x: number): number => Math.max(2 * (x - 5), -3 * (x - 5)) + x * x;
    const found = slopesAt(of, 5);
    expect(found?.kink).toBe(true);
    expect(found?.left).toBeCloseTo(7, 7);
    expect(found?.right).toBeCloseTo(12, 7);
    const beside = slopesAt(of, 5.0004);
    expect(beside?.kink).toBe(false);
    expect(Math.abs((beside?.right ?? 0) - 12.0008)).toBeLessThan(1e-5);
  });

  it('of a limit with two bounds turn at its middle', () => {
    expect(slopesAt((x) => x, 5, {}, { low: 0, high: 10 })).toMatchObject({ kink: true });
  });

  it('stand on the side that has an answer alone', () => {
    const found = slopesAt((x) => (x < 5 ? null : x * x), 5);
    expect(found?.left).toBeNull();
    expect(found?.right).toBeCloseTo(10, 7);
    expect(found?.kink).toBe(false);
  });

  it('of a count are its next steps', () => {
    expect(slopesAt((x) => x * x, 3, { whole: true, offBy: 0 })).toMatchObject({ left: 5, right: 7 });
  });
});

describe('shares of variance', () => {
  const within = (found: { low: number; high: number } | undefined, truth: number): boolean =>
    found !== undefined && found.low - 1e-12 <= truth && truth <= found.high + 1e-12;

  it('of Ishigami’s function are those of its closed form', () => {
    const model = errorModel(ishigami.errors, 0);
    const [found = []] = finish(
      shares(
        plainPoints([ishigami.limit]).at({ inputs: ['a', 'b', 'c'], results: [] }),
        model,
        { factors: [0, 1, 2], repeats: 16, points: 2048, seed: 1, certainty: 0.99 },
        new Meter(),
      ),
    );
    const truth = [
      [0.313905191147811, 0.557588855209959],
      [0.442411144790041, 0.442411144790041],
      [0, 0.243683664062148],
    ] as const;
    for (const [i, [alone, total]] of truth.entries()) {
      expect(Math.abs((found[i]?.alone.value ?? 9) - alone)).toBeLessThan(0.005);
      expect(Math.abs((found[i]?.total.value ?? 9) - total)).toBeLessThan(0.005);
      expect([within(found[i]?.alone, alone), within(found[i]?.total, total)]).toEqual([true, true]);
    }
  });

  it('of Sobol’s function g lie inside their intervals for eight weights', () => {
    const weights = [0, 1, 4.5, 9, 99, 99, 99, 99];
    const shares = ran(sobolG(weights))?.shares ?? [];
    const truth = sharesOfG(weights);
    expect(truth.variance).toBeCloseTo(0.465424, 6);
    const missed = weights.flatMap((_, i) => {
      const found = shares.find((it) => it.factor.name === `x${i}`);
      return [within(found?.alone, truth.alone[i] ?? 9), within(found?.total, truth.total[i] ?? 9)];
    });
    // One in twenty may lie outside at 95 %.
    expect(missed.filter((it) => !it).length).toBeLessThanOrEqual(3);
  });

  it('of the Dakota manual’s beam agree with its first-order moments', () => {
    const stress = ran(cantileverStress)?.shares ?? [];
    const of = (name: string, from: typeof stress): number =>
      from.find((it) => it.factor.name === name)?.total.value ?? 0;
    // R .2195, X .3902, Y .3902: first order; the beam is slightly curved in R.
    expect(Math.abs(of('X', stress) - 0.39)).toBeLessThan(0.02);
    expect(Math.abs(of('Y', stress) - 0.39)).toBeLessThan(0.02);
    expect(Math.abs(of('R', stress) - 0.22)).toBeLessThan(0.02);
    expect(of('E', stress)).toBe(0);
    const tip = ran(cantileverTip)?.shares ?? [];
    expect(Math.abs(of('Y', tip) - 0.6095)).toBeLessThan(0.02);
  });

  it('of readings with one tape stand under the tape', () => {
    const of: Case = {
      limit: { name: 'room', of: ({ a = 0, b = 0, c = 0 }) => a + b + c, low: 0 },
      errors: ['a', 'b', 'c'].map((name) => ({
        name,
        value: 5,
        offBy: 1,
        law: 'normal',
        ...(name === 'c' ? {} : { with: 'Tape ' }),
      })),
    };
    const shares = ran(of, ['room'], 0.5)?.shares ?? [];
    // Variances: tape (2√.5)² = 2, own .5 each, c 1: of 4 in all.
    const tape = shares.find((it) => it.factor.shared);
    expect(tape?.factor.name).toBe('tape');
    expect(Math.abs((tape?.alone.value ?? 0) - 0.5)).toBeLessThan(0.01);
    expect(shares).toHaveLength(4);
  });
});

describe('what turns a limit soonest', () => {
  const found = (value: number) =>
    finish(
      drivers(
        plainPoints([
          { name: 'room', of: ({ a = 0, b = 0 }) => value + 2 * (a - 10) - 5 * (b - 3) ** 2, low: 50 },
        ]),
        {
          scenario: null,
          inputs: [one('a', 10, { offBy: 0.5 }), one('b', 3, { offBy: 0.25, most: 4 })],
          limits: [],
          share: 0,
          seed: 1,
        },
      ),
    ).limits[0];

  it('is the input that need be off by the fewest of its own errors', () => {
    // a: 4 less, 8 times its error; b: √(8/5) = 1.265 off, 5.06 times, but upwards its bound stops it.
    const { soonest, holds } = found(58) ?? {};
    expect(holds).toBe(true);
    expect(soonest?.input).toBe('b');
    expect(soonest?.by).toBeCloseTo(-Math.sqrt(8 / 5), 6);
    expect(soonest?.times).toBeCloseTo(4 * Math.sqrt(8 / 5), 6);
  });

  it('mends a limit that does not hold', () => {
    expect(found(47)).toMatchObject({ holds: false, soonest: { input: 'a' } });
    expect(found(47)?.soonest?.by).toBeCloseTo(1.5, 6);
  });

  it('is nothing when no input reaches that far', () => {
    expect(found(1e6)?.soonest).toBeNull();
  });
});

describe('which measurement is worth taking again', () => {
  it('is the one whose better knowledge narrows the room most, by how much', () => {
    const of: Case = {
      limit: { name: 'room', of: ({ a = 0, b = 0 }) => 100 + a + 3 * b, low: 0 },
      errors: [
        { name: 'a', value: 0, offBy: 1, law: 'normal' },
        { name: 'b', value: 0, offBy: 1, law: 'normal' },
      ],
    };
    const again = ran(of)?.again ?? [];
    expect(again.map((it) => it.factor.name)).toEqual(['b', 'a']);
    // √10 and √(1 + 9/4) standard deviations.
    expect(Math.abs((again[0]?.now ?? 0) - 1.959964 * Math.sqrt(10))).toBeLessThan(0.05);
    expect(Math.abs((again[0]?.better ?? 0) - 1.959964 * Math.sqrt(3.25))).toBeLessThan(0.05);
  });
});
