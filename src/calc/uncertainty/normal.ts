import { polynomial } from './polynomial.ts';

const SQRT_2PI = Math.sqrt(2 * Math.PI);

/** Density of the standard normal law. */
export const normalDensity = (z: number): number => Math.exp(-0.5 * z * z) / SQRT_2PI;

// Hart's rational approximation 5666, as printed by G. West, Better approximations to cumulative normal functions,
// 2005; from memory, held against a series and a continued fraction in the tests.
const ABOVE = [
  220.206867912376, 221.213596169931, 112.079291497871, 33.912866078383, 6.37396220353165, 0.700383064443688,
  0.0352624965998911,
];
const BELOW = [
  440.413735824752, 793.826512519948, 637.333633378831, 296.564248779674, 86.7807322029461, 16.064177579207,
  1.75566716318264, 0.0883883476483184,
];
/** From here on the approximation loses figures, and a continued fraction of sixty steps has them all. */
const FAR = 4;

/** Chance that a standard normal value lies above z, for z of 0 or more. */
function upper(z: number): number {
  if (z > 38.5) return 0;
  const fall = Math.exp(-0.5 * z * z);
  if (z < FAR) return (fall * polynomial(ABOVE, z)) / polynomial(BELOW, z);
  let fraction = z;
  for (let k = 60; k > 0; k--) fraction = z + k / fraction;
  return fall / (fraction * SQRT_2PI);
}

/** Chance that a standard normal value lies below z. */
export const normalBelow = (z: number): number => (z < 0 ? upper(-z) : 1 - upper(z));

/** Chance that a standard normal value lies above z; keeps its figures where that is small. */
export const normalAbove = (z: number): number => normalBelow(-z);

// M. J. Wichura, Algorithm AS 241, Applied Statistics 37, 1988; from memory, held against published quantiles.
const NEAR = [
  [
    3.3871328727963665, 133.14166789178438, 1971.5909503065513, 13731.69376550946, 45921.95393154987,
    67265.7709270087, 33430.57558358813, 2509.0809287301227,
  ],
  [
    1, 42.31333070160091, 687.1870074920579, 5394.196021424751, 21213.794301586597, 39307.89580009271,
    28729.085735721943, 5226.495278852854,
  ],
] as const;
const MIDDLE = [
  [
    1.4234371107496835, 4.630337846156546, 5.769497221460691, 3.6478483247632045, 1.2704582524523684,
    0.2417807251774506, 0.022723844989269184, 0.0007745450142783414,
  ],
  [
    1, 2.053191626637759, 1.6763848301838038, 0.6897673349851, 0.14810397642748008, 0.015198666563616457,
    0.0005475938084995345, 1.0507500716444169e-9,
  ],
] as const;
const TAIL = [
  [
    6.657904643501103, 5.463784911164114, 1.7848265399172913, 0.29656057182850487, 0.026532189526576124,
    0.0012426609473880784, 2.7115555687434876e-5, 2.0103343992922881e-7,
  ],
  [
    1, 0.599832206555888, 0.1369298809227358, 0.014875361290850615, 0.0007868691311456133,
    1.8463183175100548e-5, 1.421511758316446e-7, 2.0442631033899397e-15,
  ],
] as const;

const ratio = ([above, below]: readonly [readonly number[], readonly number[]], x: number): number =>
  polynomial(above, x) / polynomial(below, x);

/** The value below which a standard normal value lies with the chance given; without end at 0 and 1. */
export function normalQuantile(chance: number): number {
  const q = chance - 0.5;
  if (Math.abs(q) <= 0.425) return q * ratio(NEAR, 0.180625 - q * q);
  const tail = q < 0 ? chance : 1 - chance;
  if (!(tail > 0)) return q < 0 ? Number.NEGATIVE_INFINITY : Number.POSITIVE_INFINITY;
  const r = Math.sqrt(-Math.log(tail));
  const z = r <= 5 ? ratio(MIDDLE, r - 1.6) : ratio(TAIL, r - 5);
  return q < 0 ? -z : z;
}
