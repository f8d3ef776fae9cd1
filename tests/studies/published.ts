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

/** The end gauge of JCGM 100:2008, H.1, nm: its length for six readings that are off by themselves. */
export const endGauge: Case = {
  limit: roomed((x) => {
    const [da, theta, a, dt] = [get(x, 'da'), get(x, 'theta'), get(x, 'a'), get(x, 'dt')];
    return get(x, 'd') + get(x, 'l') - 50.000623e6 * (da * theta + a * dt);
  }),
  errors: [
    normal('l', 0, 25),
    normal('d', 215, 9.7),
    normal('a', 11.5e-6, 1.2e-6),
    normal('theta', -0.1, 0.41),
    normal('da', 0, 0.58e-6),
    normal('dt', 0, 0.029),
  ],
};

/** The mass calibration of JCGM 101:2008, 9.3: the deviation from 100 g, mg, less `edge`. */
export const massCalibration = (edge: number, sign: 1 | -1): Case => ({
  limit: roomed((x) => {
    const buoyancy = (get(x, 'air') - 1.2) * (1 / get(x, 'weight') - 1 / get(x, 'reference'));
    return sign * ((get(x, 'mass') + get(x, 'added')) * (1 + buoyancy) - 100000 - edge);
  }),
  errors: [
    normal('mass', 100000, 0.05),
    normal('added', 1.234, 0.02),
    even('air', 1.1, 1.3),
    even('weight', 7000, 9000),
    even('reference', 7950, 8050),
  ],
});

/** A frame that may give way in three ways (OpenTURNS, t_SystemFORM_std); its five moments share half their variance. */
export const frame: Case = {
  limit: roomed((x) => {
    const [m1, m2, m3, m4, m5] = ['m1', 'm2', 'm3', 'm4', 'm5'].map((it) => get(x, it)) as [
      number,
      number,
      number,
      number,
      number,
    ];
    const [h, v] = [get(x, 'h'), get(x, 'v')];
    const [sway, beam, both] = [m1 + m2 + m4 + m5, m2 + 2 * m3 + m4, m1 + 2 * m3 + 2 * m4 + m5];
    const ways = Math.min(sway - 5 * h, beam - 5 * v, both - 5 * h - 5 * v);
    return Math.max(ways, 400 - sway, 350 - beam, 750 - both);
  }),
  errors: [
    ...['m1', 'm2', 'm3', 'm4', 'm5'].map((it) => ({ ...normal(it, 200, 30), with: 'moments' })),
    normal('h', 60, 30),
    normal('v', 60, 15),
  ],
};

/** Flow through a borehole (B. Worley, 1987, with the laws of M. Morris and others, 1993). */
export const borehole: Case = {
  limit: roomed((x) => {
    const rw = get(x, 'rw');
    const far = Math.log(Math.exp(7.71 + 1.0056 * get(x, 'r')) / rw);
    const [tu, tl] = [get(x, 'tu'), get(x, 'tl')];
    const along = (2 * get(x, 'l') * tu) / (far * rw ** 2 * get(x, 'kw'));
    return (2 * Math.PI * tu * (get(x, 'hu') - get(x, 'hl'))) / (far * (1 + along + tu / tl));
  }),
  errors: [
    normal('rw', 0.1, 0.0161812),
    normal('r', 0, 1),
    even('tu', 63070, 115600),
    even('hu', 990, 1110),
    even('tl', 63.1, 116),
    even('hl', 700, 820),
    even('l', 1120, 1680),
    even('kw', 9855, 12045),
  ],
};
