import { describe, expect, it } from 'vitest';
import { normalAbove } from '../../../src/calc/uncertainty/normal.ts';
import { type OddsAsk, odds } from '../../../src/studies/odds.ts';
import { finish } from '../../../src/studies/study.ts';
import { type PlainPointLimit, plainPoints } from '../plain-points.ts';
import {
  axialBar,
  type Case,
  cantileverStress,
  cantileverTip,
  even,
  fourBranches,
  lessLoad,
  normal,
  twoPoints,
} from '../published.ts';

const asked = (of: Case, over: Partial<OddsAsk> = {}): OddsAsk => ({
  scenario: null,
  errors: of.errors,
  share: 0,
  seed: 1,
  repeats: 16,
  points: 1024,
  certainty: 0.99,
  ...over,
});

const ran = (of: Case, over: Partial<OddsAsk> = {}) => {
  const all = finish(odds(plainPoints([of.limit]), asked(of, over)));
  const [only] = all.limits;
  if (only === undefined) throw new Error('no limit');
  return { ...only, together: all.together };
};

const sum = (count: number): PlainPointLimit => ({
  name: 'room',
  of: (x) => Array.from({ length: count }, (_, i) => x[`x${i}`] ?? 0).reduce((a, b) => a + b, 0),
  low: 0,
});

describe('first order, against published moments', () => {
  it('of the Dakota manual’s beam: stress 0.44 and 0.153675, tip 0.751860 and 0.179512', () => {
    // Its baselines print stress/R − 1 as 0.44 at these means, with the sign turned round there.
    const stress = ran(cantileverStress).firstOrder;
    const R = 40000;
    const [X, Y] = [500, 1000];
    const c = 600 / 2.5 ** 3;
    const mean = 1 - (c * (X + Y)) / R;
    const deviation = Math.hypot((c * 100) / R, (c * 100) / R, (c * (X + Y) * 2000) / R ** 2);
    expect(stress?.room).toBeCloseTo(mean, 12);
    expect(Math.abs((stress?.deviation ?? 0) - deviation)).toBeLessThan(1e-9);
    expect(Math.abs(-mean - 0.44)).toBeLessThan(5e-4);
    expect(Math.abs((stress?.deviation ?? 0) - 0.153675)).toBeLessThan(5e-7);
    const tip = ran(cantileverTip).firstOrder;
    expect(Math.abs(-(tip?.room ?? 0) - 0.75186)).toBeLessThan(5e-7);
    expect(Math.abs((tip?.deviation ?? 0) - 0.179512)).toBeLessThan(5e-7);
  });

  it('of JCGM 101’s sums: 2, and the root of 103', () => {
    const four = Array.from({ length: 4 }, (_, i) => even(`x${i}`, -Math.sqrt(3), Math.sqrt(3)));
    expect(ran({ limit: sum(4), errors: four }).firstOrder?.deviation).toBeCloseTo(2, 10);
    const wide = [...four.slice(0, 3), even('x3', -10 * Math.sqrt(3), 10 * Math.sqrt(3))];
    const found = ran({ limit: sum(4), errors: wide }).firstOrder;
    expect(found?.deviation).toBeCloseTo(Math.sqrt(103), 9);
    expect(found?.largest).toMatchObject({ name: 'x3' });
  });
});

describe('sampled', () => {
  it('finds the exact tail of four even errors where first order is off', () => {
    // JCGM 101:2008, 9.2.3: 95 % of the sum lies within ±2√3(2 − 0.6^¼).
    const four = Array.from({ length: 4 }, (_, i) => even(`x${i}`, -Math.sqrt(3), Math.sqrt(3)));
    const edge = 2 * Math.sqrt(3) * (2 - 0.6 ** 0.25);
    const limit = { ...sum(4), low: -edge };
    const { sampled, firstOrder } = ran({ limit, errors: four });
    expect(sampled.fails.low).toBeLessThanOrEqual(0.025);
    expect(sampled.fails.high).toBeGreaterThanOrEqual(0.025);
    expect(sampled.fails.high - sampled.fails.low).toBeLessThan(0.004);
    expect(Math.abs((firstOrder?.fails ?? 0) - normalAbove(edge / 2))).toBeLessThan(1e-9);
    expect(sampled.deviation).toBeCloseTo(2, 1);
  });

  it('finds resistance less load: 0.0786496', () => {
    // Waarts, 2000; distance √2.
    const { sampled, firstOrder } = ran(lessLoad(4));
    expect(firstOrder?.fails).toBeCloseTo(0.0786496, 7);
    expect(sampled.fails.low).toBeLessThanOrEqual(0.0786496);
    expect(sampled.fails.high).toBeGreaterThanOrEqual(0.0786496);
  });

  it('takes a shared error into account: two readings with one tape cancel in a difference', () => {
    const limit: PlainPointLimit = { name: 'room', of: ({ a = 0, b = 0 }) => a - b, low: 0 };
    const errors = [
      { ...normal('a', 1, 1), with: 'tape' },
      { ...normal('b', 0, 1), with: 'tape' },
    ];
    const apart = ran({ limit, errors });
    const half = ran({ limit, errors }, { share: 0.5 });
    expect(apart.firstOrder?.deviation).toBeCloseTo(Math.SQRT2, 10);
    expect(half.firstOrder?.deviation).toBeCloseTo(1, 10);
    expect(half.sampled.fails.low).toBeLessThanOrEqual(normalAbove(1));
    expect(half.sampled.fails.high).toBeGreaterThanOrEqual(normalAbove(1));
    expect(ran({ limit, errors }, { share: 1 }).firstOrder?.deviation).toBeCloseTo(0, 10);
  });

  it('counts what has no answer as failing, and says how much of it that is', () => {
    const limit: PlainPointLimit = { name: 'room', of: ({ x = 0 }) => (x < 0.1 ? null : x), low: 0.2 };
    const { sampled } = ran({ limit, errors: [even('x', 0, 1)] });
    expect(Math.abs(sampled.fails.value - 0.2)).toBeLessThan(0.002);
    expect(Math.abs(sampled.lacking / sampled.hits - 0.5)).toBeLessThan(0.01);
  });
});

describe('the worst case', () => {
  it('of a stack is the sum of all tolerances, with the readings there', () => {
    // Shigley's Mechanical Engineering Design, 9th ed., example 1-3: 5 ± 10 thousandths.
    const limit: PlainPointLimit = {
      name: 'room',
      of: ({ a = 0, b = 0, c = 0, d = 0 }) => a - b - c - d,
      low: 0,
    };
    const errors = [even('a', 1747, 1753), even('b', 749, 751), even('c', 115, 125), even('d', 874, 876)];
    const { worst } = ran({ limit, errors });
    expect(worst.room).toBe(-5);
    expect(worst.fails).toBe(true);
    expect(Object.fromEntries(worst.at.map((it) => [it.name, it.value]))).toEqual({
      a: 1747,
      b: 751,
      c: 125,
      d: 876,
    });
  });

  it('is found inside the range where the room sags there', () => {
    const limit: PlainPointLimit = { name: 'room', of: ({ x = 0, y = 0 }) => (x - 1) ** 2 + x * y, low: -5 };
    const { worst } = ran({ limit, errors: [even('x', 0, 2), even('y', -2, 2)] });
    // Corner x = 2, y = −2: 1 − 4.
    expect(worst.room).toBeCloseTo(2, 12);
  });
});

describe('small chances', () => {
  const within = (found: { low: number; high: number } | undefined, truth: number): void => {
    expect(found?.low).toBeLessThanOrEqual(truth);
    expect(found?.high).toBeGreaterThanOrEqual(truth);
    expect((found?.high ?? 9) - (found?.low ?? 0)).toBeLessThan(0.25 * truth);
  };

  it('of resistance less load lie at 3.535534 deviations: 2.03476e-4', () => {
    const { rare } = ran(lessLoad(7));
    expect(Math.abs((rare?.distances[0] ?? 0) - 3.5355339059)).toBeLessThan(1e-6);
    within(rare?.fails, 2.03476e-4);
  });

  it('of an even error beyond its half-width cannot be', () => {
    const limit: PlainPointLimit = { name: 'room', of: ({ x = 0 }) => x, low: 0 };
    const { rare, worst, sampled } = ran({ limit, errors: [even('x', 0.5, 2)] });
    expect(worst).toMatchObject({ room: 0.5, fails: false });
    expect(rare).toBeUndefined();
    expect(sampled.hits).toBe(0);
    expect(sampled.fails.high).toBeGreaterThan(0);
  });

  it('of four even errors that must all be at their ends are found', () => {
    // The corner of a four-dimensional cube: chance of a sum below 4ε is (4ε)⁴/4! for ε below a quarter.
    const errors = Array.from({ length: 4 }, (_, i) => even(`x${i}`, 0, 1));
    const edge = 0.2;
    const { rare } = ran({ limit: { ...sum(4), low: edge }, errors });
    within(rare?.fails, edge ** 4 / 24);
  });
});

describe('published cases that sampling alone can see', () => {
  it.each([
    ['an axial bar (OpenTURNS)', axialBar, 0.0291981946],
    ['four branches (Waarts, 2000)', fourBranches, 0.00222279507],
    ['a parabola with two design points (OpenTURNS)', twoPoints, 0.0030163],
  ])('%s', (_, of, truth) => {
    const { sampled, rare } = ran(of);
    expect(sampled.fails.low).toBeLessThanOrEqual(truth);
    expect(sampled.fails.high).toBeGreaterThanOrEqual(truth);
    expect(rare).toBeUndefined();
  });
});
