import { describe, expect, it } from 'vitest';
import { combined, effectiveFreedom, type Part, worstSum } from '../../../src/calc/uncertainty/law.ts';
import { studentFactor } from '../../../src/calc/uncertainty/student.ts';

describe('JCGM 100:2008, H.1, an end gauge', () => {
  // Contributions in nm: standard, difference, expansion twice nought, temperature difference, coefficient difference.
  const parts: Part[] = [
    { part: 25, freedom: 18 },
    { part: 9.7, freedom: 25.6 },
    { part: 0 },
    { part: 0 },
    { part: 50.000623e6 * -0.1 * 0.58e-6, freedom: 50 },
    { part: 50.000623e6 * 11.5e-6 * 0.029, freedom: 2 },
  ];

  it('combines to 32 nm', () => {
    // The source rounds each contribution before it adds.
    expect(Math.abs(combined(parts) - 31.66)).toBeLessThan(0.06);
    expect(Math.abs(combined(parts) ** 2 - 1002)).toBeLessThan(4);
    expect(Math.abs(parts[4]?.part ?? 0)).toBeCloseTo(2.9, 1);
    expect(parts[5]?.part).toBeCloseTo(16.6, 0);
  });

  it('has 16 effective degrees of freedom and 93 nm at 99 %', () => {
    const freedom = effectiveFreedom(parts, combined(parts));
    expect(Math.abs(freedom - 16.7)).toBeLessThan(0.1);
    expect(Math.abs(studentFactor(0.99, Math.floor(freedom)) * 32 - 93)).toBeLessThan(0.5);
  });

  it('pools its own parts: 13/√5, 10/t95(5), 20/3 give 9.7 nm and 25.6 degrees', () => {
    const pooled: Part[] = [
      { part: 13 / Math.sqrt(5), freedom: 24 },
      { part: 10 / studentFactor(0.95, 5), freedom: 5 },
      { part: 20 / 3, freedom: 8 },
    ];
    const u = combined(pooled);
    expect(Math.abs(u - 9.7)).toBeLessThan(0.05);
    expect(Math.abs(effectiveFreedom(pooled, u) - 25.6)).toBeLessThan(0.3);
  });
});

it('JCGM 100:2008, G.4.1: 0.25, 0.57 and 0.82 % of 10, 5 and 15 readings have 19.0 degrees', () => {
  const parts = [
    { part: 0.25, freedom: 9 },
    { part: 0.57, freedom: 4 },
    { part: 0.82, freedom: 14 },
  ];
  expect(Math.abs(effectiveFreedom(parts, combined(parts)) - 18.9987)).toBeLessThan(5e-4);
});

describe('JCGM 100:2008, H.2, resistance and reactance measured together', () => {
  // Table H.2, the five sets of readings.
  const V = [5.007, 4.994, 5.005, 4.99, 4.999];
  const I = [19.663, 19.639, 19.64, 19.685, 19.678].map((it) => it / 1000);
  const phi = [1.0456, 1.0438, 1.0468, 1.0428, 1.0433];
  const mean = (of: number[]): number => of.reduce((a, b) => a + b, 0) / of.length;
  const [v, i, p] = [mean(V), mean(I), mean(phi)];
  const covariance = (a: number[], b: number[]): number =>
    a.reduce((sum, it, n) => sum + (it - mean(a)) * ((b[n] ?? 0) - mean(b)), 0) / (a.length * (a.length - 1));
  const readings = [V, I, phi];
  const u = readings.map((it) => Math.sqrt(covariance(it, it)));
  const r = (a: number, b: number): number =>
    covariance(readings[a] ?? [], readings[b] ?? []) / ((u[a] ?? 0) * (u[b] ?? 0));
  const of = (slopes: number[]): number =>
    combined(
      slopes.map((slope, n) => ({ part: slope * (u[n] ?? 0) })),
      r,
    );

  it('needs its correlations', () => {
    expect([r(0, 1), r(0, 2), r(1, 2)].map((it) => it.toFixed(2))).toEqual(['-0.36', '0.86', '-0.65']);
    const R = [Math.cos(p) / i, (-v * Math.cos(p)) / i ** 2, (-v * Math.sin(p)) / i];
    const X = [Math.sin(p) / i, (-v * Math.sin(p)) / i ** 2, (v * Math.cos(p)) / i];
    const Z = [1 / i, -v / i ** 2, 0];
    expect(Math.abs(of(R) - 0.07107)).toBeLessThan(1e-5);
    expect(Math.abs(of(X) - 0.29558)).toBeLessThan(1e-5);
    expect(Math.abs(of(Z) - 0.23634)).toBeLessThan(1e-5);
    expect(Math.abs(combined(R.map((slope, n) => ({ part: slope * (u[n] ?? 0) }))) - 0.1945)).toBeLessThan(
      5e-5,
    );
  });
});

describe('JCGM 101:2008, 9.2', () => {
  it('four unit parts combine to 2; one of 10 beside three of 1 to the root of 103', () => {
    expect(combined([1, 1, 1, 1].map((part) => ({ part })))).toBe(2);
    expect(combined([1, 1, 1, 10].map((part) => ({ part })))).toBeCloseTo(Math.sqrt(103), 14);
    expect(combined([1, 1, 1, 10].map((part) => ({ part }))) * 1.959963984540054).toBeCloseTo(19.89146, 5);
  });
});

describe('a stack of parts', () => {
  // Shigley's Mechanical Engineering Design, 9th ed., example 1-3: tolerances in thousandths of an inch.
  it('is off by 10 at worst and by 6 in the root of the squares', () => {
    expect(worstSum([3, -1, -5, -1])).toBe(10);
    expect(combined([3, -1, -5, -1].map((part) => ({ part })))).toBe(6);
  });

  it('errors shared wholly add up, or cancel where they are taken from one another', () => {
    const both = () => 1;
    expect(combined([{ part: 3 }, { part: 4 }], both)).toBe(7);
    expect(combined([{ part: 3 }, { part: -3 }], both)).toBe(0);
  });
});
