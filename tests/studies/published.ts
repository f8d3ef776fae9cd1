import type { ReadingError } from '../../src/studies/uncertain/reading-error.ts';
import type { PlainPointLimit } from './plain-points.ts';

/** A published case: a room by a plain function of inputs with known laws. */
export interface Case {
  readonly limit: PlainPointLimit;
  readonly errors: readonly ReadingError[];
}

export const normal = (name: string, value: number, offBy: number): ReadingError => ({
  name,
  value,
  offBy,
  law: 'normal',
});

export const even = (name: string, low: number, high: number): ReadingError => ({
  name,
  value: (low + high) / 2,
  offBy: (high - low) / 2,
  law: 'rectangular',
});

const roomed = (of: (x: Readonly<Record<string, number>>) => number): PlainPointLimit => ({
  name: 'room',
  of,
  low: 0,
});

const get = (x: Readonly<Record<string, number>>, name: string): number => x[name] ?? Number.NaN;

/** T. Ishigami and T. Homma, 1990, with a = 7 and b = 0.1. */
export const ishigami: Case = {
  limit: roomed((x) => {
    const [a, b, c] = [get(x, 'a'), get(x, 'b'), get(x, 'c')];
    return Math.sin(a) + 7 * Math.sin(b) ** 2 + 0.1 * c ** 4 * Math.sin(a);
  }),
  errors: ['a', 'b', 'c'].map((name) => even(name, -Math.PI, Math.PI)),
};

/** Sobol's function g with the weights given. */
export const sobolG = (weights: readonly number[]): Case => ({
  limit: roomed((x) =>
    weights.reduce((all, a, i) => (all * (Math.abs(4 * get(x, `x${i}`) - 2) + a)) / (1 + a), 1),
  ),
  errors: weights.map((_, i) => even(`x${i}`, 0, 1)),
});

/** Closed forms for g: each weight's share alone and in total. */
export function sharesOfG(weights: readonly number[]) {
  const parts = weights.map((a) => 1 / (3 * (1 + a) ** 2));
  const variance = parts.reduce((all, v) => all * (1 + v), 1) - 1;
  return {
    variance,
    alone: parts.map((v) => v / variance),
    total: parts.map((v) => (v * (1 + variance)) / (1 + v) / variance),
  };
}

const W = 2.5;
const LENGTH = 100;

/** The cantilever of the Dakota manual's uncertainty examples, w = t = 2.5: stress over its strength. */
export const cantileverStress: Case = {
  limit: roomed(
    (x) =>
      1 -
      (600 / (W * W * W)) * (get(x, 'Y') / get(x, 'R')) -
      (600 / (W * W * W)) * (get(x, 'X') / get(x, 'R')),
  ),
  errors: [
    normal('R', 40000, 2000),
    normal('E', 2.9e7, 1.45e6),
    normal('X', 500, 100),
    normal('Y', 1000, 100),
  ],
};

/** The same beam's tip, over the 2.2535 in that are allowed. */
export const cantileverTip: Case = {
  limit: roomed((x) => {
    const bend = (4 * LENGTH ** 3) / (get(x, 'E') * W * W);
    return 1 - (bend * Math.hypot(get(x, 'Y'), get(x, 'X'))) / (W * W) / 2.2535;
  }),
  errors: cantileverStress.errors,
};

/** E, F, L and I of a cantilever with an end load; its tip may move by 3 (OpenTURNS, t_FORM_std). */
export const endLoad: Case = {
  limit: roomed((x) => 3 - (get(x, 'F') * get(x, 'L') ** 3) / (3 * get(x, 'E') * get(x, 'I'))),
  errors: [normal('E', 50, 1), normal('F', 1, 1), normal('L', 10, 1), normal('I', 5, 1)],
};

/** Resistance less load, both normal (Waarts, 2000; otbenchmark RP8 and others of its kind). */
export const lessLoad = (mean: number): Case => ({
  limit: roomed((x) => get(x, 'R') - get(x, 'S')),
  errors: [normal('R', mean, 1), normal('S', 2, 1)],
});

const ROOT = Math.SQRT2;

/** Four branches in series (Waarts, 2000). */
export const fourBranches: Case = {
  limit: roomed((x) => {
    const [a, b] = [get(x, 'a'), get(x, 'b')];
    const bowl = 3 + 0.1 * (a - b) ** 2;
    return Math.min(bowl - (a + b) / ROOT, bowl + (a + b) / ROOT, a - b + 7 / ROOT, b - a + 7 / ROOT);
  }),
  errors: [normal('a', 0, 1), normal('b', 0, 1)],
};

/** A parabola with two design points (OpenTURNS, t_MultiFORM). */
export const twoPoints: Case = {
  limit: roomed((x) => 5 - get(x, 'y') - 0.5 * (get(x, 'x') - 0.1) ** 2),
  errors: [normal('x', 0, 1), normal('y', 0, 1)],
};

/** An axial bar of 20 mm: a lognormal strength of 300 with deviation 30, a normal load of 75000 (OpenTURNS). */
export const axialBar: Case = {
  limit: roomed((x) => {
    const spread = Math.log(1 + 0.01);
    const strength = Math.exp(Math.log(300) - spread / 2 + Math.sqrt(spread) * get(x, 'r'));
    return strength - get(x, 'F') / (100 * Math.PI);
  }),
  errors: [normal('r', 0, 1), normal('F', 75000, 5000)],
};
