// Lanczos' approximation with g = 7 and nine terms; from memory, held against exact factorials in the tests.
const LANCZOS = [
  0.9999999999998099, 676.5203681218851, -1259.1392167224028, 771.3234287776531, -176.6150291621406,
  12.507343278686905, -0.13857109526572012, 9.984369578019572e-6, 1.5056327351493116e-7,
];

/** Logarithm of the gamma function, for x above 0. */
export function logGamma(x: number): number {
  if (x < 0.5) return Math.log(Math.PI / Math.sin(Math.PI * x)) - logGamma(1 - x);
  const t = x + 6.5;
  let sum = LANCZOS[0] ?? 0;
  for (let i = 1; i < LANCZOS.length; i++) sum += (LANCZOS[i] ?? 0) / (x + i - 1);
  return 0.5 * Math.log(2 * Math.PI) + (x - 0.5) * Math.log(t) - t + Math.log(sum);
}

const TINY = 1e-300;

/** The continued fraction of the incomplete beta function, by Lentz's method. */
function fraction(x: number, a: number, b: number): number {
  let c = 1;
  let d = 1 - ((a + b) * x) / (a + 1);
  d = 1 / (Math.abs(d) < TINY ? TINY : d);
  let h = d;
  for (let m = 1; m <= 1000; m++) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    d = 1 + even * d;
    c = 1 + even / c;
    d = 1 / (Math.abs(d) < TINY ? TINY : d);
    if (Math.abs(c) < TINY) c = TINY;
    h *= d * c;
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 + odd * d;
    c = 1 + odd / c;
    d = 1 / (Math.abs(d) < TINY ? TINY : d);
    if (Math.abs(c) < TINY) c = TINY;
    const step = d * c;
    h *= step;
    if (Math.abs(step - 1) < 1e-15) break;
  }
  return h;
}

/** Chance that a value of the beta law with shapes a and b, both above 0, lies below x. */
export function betaBelow(x: number, a: number, b: number): number {
  if (!(x > 0)) return 0;
  if (x >= 1) return 1;
  const front = Math.exp(logGamma(a + b) - logGamma(a) - logGamma(b) + a * Math.log(x) + b * Math.log1p(-x));
  return x < (a + 1) / (a + b + 2)
    ? (front * fraction(x, a, b)) / a
    : 1 - (front * fraction(1 - x, b, a)) / b;
}

/** The value below which a value of the beta law lies with the chance given. */
export function betaQuantile(chance: number, a: number, b: number): number {
  let low = 0;
  let high = 1;
  for (let i = 0; i < 1100 && high - low > 1e-15 * high; i++) {
    const middle = (low + high) / 2;
    if (betaBelow(middle, a, b) < chance) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
