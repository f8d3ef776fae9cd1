import { describe, expect, it } from 'vitest';
import { chanceOf, meanOf, ratioOf } from '../../../src/calc/uncertainty/interval.ts';
import { normalBelow, normalQuantile } from '../../../src/calc/uncertainty/normal.ts';
import { seeded } from '../../../src/calc/uncertainty/seeded.ts';
import { correlationOf } from '../../../src/calc/uncertainty/shared-error.ts';

describe('the chance behind hits', () => {
  it('has the ends that closed forms give', () => {
    // No hit in n: 1 − (α/2)^(1/n); every one: its mirror image.
    expect(chanceOf(0, 20, 0.95).high).toBeCloseTo(1 - 0.025 ** (1 / 20), 12);
    expect(chanceOf(20, 20, 0.95).low).toBeCloseTo(0.025 ** (1 / 20), 12);
    // 1 hit in n: the low end is 1 − (1 − α/2)^(1/n).
    expect(chanceOf(1, 50, 0.95).low).toBeCloseTo(1 - 0.975 ** (1 / 50), 12);
  });

  it('holds the truth at least as often as it says, counted over every outcome', () => {
    for (const p of [0.01, 0.2, 0.5]) {
      let covered = 0;
      let weight = (1 - p) ** 40;
      for (let hits = 0; hits <= 40; hits++) {
        const { low, high } = chanceOf(hits, 40, 0.95);
        if (low <= p && p <= high) covered += weight;
        weight *= ((40 - hits) / (hits + 1)) * (p / (1 - p));
      }
      expect(covered).toBeGreaterThanOrEqual(0.95);
    }
  });
});

describe('repeats', () => {
  it('give a mean and its half-width by hand', () => {
    // 1, 2, 3: mean 2, standard error 1/√3, t95(2) = 4.302652730.
    const { value, low, high } = meanOf([1, 2, 3], 0.95);
    expect(value).toBe(2);
    expect((high - low) / 2).toBeCloseTo(4.30265273 / Math.sqrt(3), 7);
  });

  it('of twenty temperatures have the mean 100.145 °C and its uncertainty 0.333 °C', () => {
    // JCGM 100:2008, 4.4.3, table 1; the list from memory, its mean and deviation as published. t95(19) = 2.0930241.
    const listed =
      '96.90 98.18 98.25 98.61 99.03 99.49 99.56 99.74 99.89 100.07 100.33 100.42 100.68 100.95 101.11 101.20 101.57 101.84 102.36 102.72';
    const { value, low, high } = meanOf(listed.split(' ').map(Number), 0.95);
    expect(Math.abs(value - 100.145)).toBeLessThan(5e-4);
    expect(Math.abs((high - low) / 2 / 2.0930241 - 0.333)).toBeLessThan(5e-4);
  });

  it('give a ratio without spread where every repeat agrees', () => {
    const { value, low, high } = ratioOf([1, 2, 3], [2, 4, 6], 0.99);
    expect([value, low, high].map((it) => it.toFixed(12))).toEqual(Array(3).fill('0.500000000000'));
  });
});

describe('errors shared by two readings', () => {
  it.each([
    ['rectangular', 'rectangular'],
    ['rectangular', 'normal'],
    ['normal', 'normal'],
  ] as const)('%s and %s, as sampling finds', (a, b) => {
    const random = seeded(11);
    const score = 0.6;
    const value = (law: string, z: number): number =>
      law === 'normal' ? z : Math.sqrt(12) * (normalBelow(z) - 0.5);
    let sum = 0;
    const count = 200_000;
    for (let n = 0; n < count; n++) {
      const x = normalQuantile(random() || 0.5);
      const y = score * x + Math.sqrt(1 - score * score) * normalQuantile(random() || 0.5);
      sum += value(a, x) * value(b, y);
    }
    expect(Math.abs(sum / count - correlationOf(score, a, b))).toBeLessThan(0.008);
  });
});
