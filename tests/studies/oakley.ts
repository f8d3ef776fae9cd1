import { type Case, normal } from './published.ts';

/** Rows of the quadratic part, to three figures (the authors' psa_example.txt, as SALib's oakley2004 has it). */
const QUADRATIC: readonly string[] = [
  '-.0225 -.185 .134 .369 .172 .137 -.44 -.0814 .713 -.444 .504 -.0241 -.0459 .217 .0559',
  '.257 .0538 .258 .238 -.591 -.0816 -.287 .416 .498 .0839 -.111 .0332 -.14 -.031 -.223',
  '-.056 .195 .0955 -.286 -.144 .224 .145 .29 .231 -.319 -.29 -.21 .431 .0244 .0449',
  '.664 .431 .299 -.162 -.315 -.39 .177 .058 .172 .135 -.353 .251 -.0188 .365 -.325',
  '-.121 .125 .107 .0466 -.217 .195 -.0655 .0244 -.0968 .194 .334 .313 -.0836 -.253 .373',
  '-.284 -.328 -.105 -.221 -.137 -.144 -.115 .224 -.0304 -.515 .0173 .039 .361 .309 .05',
  '-.0779 .00375 .887 -.266 -.0793 -.0427 -.187 -.356 -.175 .0887 .4 -.056 .137 .215 -.0113',
  '-.0923 .592 .0313 -.0331 -.243 -.0998 .0345 .0951 -.338 .00639 -.612 .0813 .887 .143 .148',
  '-.132 .529 .127 .0451 .584 .373 .114 -.295 -.57 .463 -.0941 .14 -.386 -.449 -.146',
  '.0581 -.323 .0931 .0724 -.569 .526 .237 -.0118 .0718 .0783 -.134 .227 .144 -.452 -.556',
  '.661 .346 .141 .519 -.28 -.16 -.0684 -.204 .0697 .231 -.0444 -.165 .216 .00427 -.0874',
  '.316 -.0276 .134 .135 .054 -.174 .175 .0603 -.179 -.311 -.254 .0258 -.43 -.623 -.034',
  '-.29 .0341 .0349 -.121 .026 -.335 -.414 .0532 -.271 -.0263 .41 .266 .156 -.187 .0199',
  '-.244 -.441 .0126 .249 .0711 .246 .175 .00853 .251 -.147 -.0846 .369 -.3 .11 -.757',
  '.0415 -.26 .464 -.361 -.95 -.165 .00309 .0528 .225 .384 .456 -.186 .00823 .167 .16',
];
const numbers = (row: string): readonly number[] => row.split(' ').map(Number);
const M = QUADRATIC.map(numbers);
const LINE = numbers(
  '.0118 .0456 .2297 .0393 .1177 .3865 .3897 .6061 .6159 .4005 1.0741 1.1474 .788 1.1242 1.1982',
);
const SINE = numbers(
  '.4341 .0887 .0512 .3233 .1489 1.036 .9892 .9672 .8977 .8083 1.8426 2.4712 2.3946 2.0045 2.2621',
);
const COSINE = numbers(
  '.1044 .2057 .0774 .273 .1253 .7526 .857 1.0331 .8388 .797 2.2145 2.0382 2.4004 2.0541 1.9845',
);

const at = (row: readonly number[] | undefined, i: number): number => row?.[i] ?? Number.NaN;
const names = LINE.map((_, i) => `x${i + 1}`);

/** The function of J. Oakley and A. O'Hagan (2004), equation 21: fifteen standard normal inputs. */
export const oakley: Case = {
  limit: {
    name: 'room',
    of: (input) => {
      const x = names.map((it) => input[it] ?? Number.NaN);
      return x.reduce((sum, a, i) => {
        const bent = x.reduce((all, b, j) => all + at(M[i], j) * b, 0);
        return sum + at(LINE, i) * a + at(SINE, i) * Math.sin(a) + at(COSINE, i) * Math.cos(a) + a * bent;
      }, 0);
    },
    low: 0,
  },
  errors: names.map((it) => normal(it, 0, 1)),
};

/**
 * Each input's share alone and in total, in closed form. For a standard normal x: var sin = (1 − e⁻²)/2,
 * var cos = (1 + e⁻²)/2 − e⁻¹, var x² = 2, cov(x, sin) = e^−½, cov(cos, x²) = −e^−½; two inputs act together by
 * their product alone.
 */
export function sharesOfOakley() {
  const [e1, e2, half] = [Math.exp(-1), Math.exp(-2), Math.exp(-0.5)];
  const single = names.map((_, i) => {
    const [a, b, c, d] = [at(LINE, i), at(SINE, i), at(COSINE, i), at(M[i], i)];
    const squares = a * a + (b * b * (1 - e2)) / 2 + c * c * ((1 + e2) / 2 - e1) + 2 * d * d;
    return squares + 2 * a * b * half - 2 * c * d * half;
  });
  const pair = (i: number, j: number): number => (i === j ? 0 : (at(M[i], j) + at(M[j], i)) ** 2);
  const pairs = names.map((_, i) => names.reduce((sum, _, j) => sum + pair(i, j), 0));
  const variance = single.reduce((a, b) => a + b, 0) + pairs.reduce((a, b) => a + b, 0) / 2;
  return {
    alone: single.map((it) => it / variance),
    total: single.map((it, i) => (it + at(pairs, i)) / variance),
  };
}
