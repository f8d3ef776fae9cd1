import { describe, expect, it } from 'vitest';
import { sobolPoints } from '../../../src/calc/uncertainty/sobol.ts';
import { halfWidth } from '../../../src/studies/drivers/again.ts';
import {
  correlationBetween,
  errorModel,
  fromChances,
  fromScores,
} from '../../../src/studies/uncertain/error-model.ts';
import type { ReadingError } from '../../../src/studies/uncertain/reading-error.ts';
import { even, normal } from '../published.ts';

const COUNT = 2 ** 15;

const sumsOf = (errors: readonly ReadingError[], share = 0): Float64Array => {
  const model = errorModel(errors, share);
  const columns = fromChances(model, sobolPoints(model.factors.length, COUNT, 4), COUNT);
  return Float64Array.from({ length: COUNT }, (_, n) => columns.reduce((sum, it) => sum + (it[n] ?? 0), 0));
};

describe('JCGM 101:2008, 9.2, half the width that holds 95 % of a sum', () => {
  const unit = (name: string, times = 1) => even(name, -times * Math.sqrt(3), times * Math.sqrt(3));
  it.each([
    ['four normal errors', ['a', 'b', 'c', 'd'].map((it) => normal(it, 0, 1)), 3.91993, 0.01],
    [
      'four even errors',
      ['a', 'b', 'c', 'd'].map((it) => unit(it)),
      2 * Math.sqrt(3) * (2 - 0.6 ** 0.25),
      0.01,
    ],
    [
      'three and one of ten times their size',
      [unit('a'), unit('b'), unit('c'), unit('d', 10)],
      17.01581,
      0.05,
    ],
  ])('%s', (_, errors, half, tolerance) => {
    expect(Math.abs(halfWidth(sumsOf(errors), 0.95) - half)).toBeLessThan(tolerance);
  });
});

describe('errors that share an instrument', () => {
  const taped: readonly ReadingError[] = [
    { ...even('a', 0, 2), with: 'tape' },
    { ...even('b', 5, 9), with: ' Tape' },
    { ...normal('c', 0, 1), with: 'tape' },
    { ...even('d', 0, 1), with: 'level' },
    even('e', 0, 1),
  ];

  it('move together as their correlation says, and each keeps its own law', () => {
    const model = errorModel(taped, 0.7);
    const columns = fromChances(model, sobolPoints(model.factors.length, COUNT, 9), COUNT);
    const mean = (of: (n: number) => number): number =>
      Array.from({ length: COUNT }, (_, n) => of(n)).reduce((a, b) => a + b, 0) / COUNT;
    const at = (i: number, n: number): number => columns[i]?.[n] ?? Number.NaN;
    const deviation = (i: number): number =>
      Math.sqrt(mean((n) => at(i, n) ** 2) - mean((n) => at(i, n)) ** 2);
    const correlation = (i: number, j: number): number =>
      (mean((n) => at(i, n) * at(j, n)) - mean((n) => at(i, n)) * mean((n) => at(j, n))) /
      (deviation(i) * deviation(j));
    expect(deviation(0)).toBeCloseTo(1 / Math.sqrt(3), 3);
    expect(deviation(2)).toBeCloseTo(1, 2);
    for (const [i, j] of [
      [0, 1],
      [0, 2],
      [0, 3],
      [3, 4],
    ] as const) {
      expect(Math.abs(correlation(i, j) - correlationBetween(model, i, j))).toBeLessThan(0.01);
    }
    expect(correlationBetween(model, 0, 3)).toBe(0);
  });

  it('are one error when they share it wholly', () => {
    const model = errorModel(taped.slice(0, 2), 1);
    expect(model.factors).toHaveLength(1);
    const [a, b] = fromScores(model, [Float64Array.of(-1, 0, 2)], 3);
    for (const n of [0, 1, 2]) expect(((b?.[n] ?? 9) - 7) / 2).toBeCloseTo((a?.[n] ?? 9) - 1, 14);
  });
});
