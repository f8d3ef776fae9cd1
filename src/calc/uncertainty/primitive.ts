/** Prime factors of a whole number, each once. */
function primeFactors(n: number): number[] {
  const found: number[] = [];
  let rest = n;
  for (let p = 2; p * p <= rest; p++) {
    if (rest % p !== 0) continue;
    found.push(p);
    while (rest % p === 0) rest /= p;
  }
  return rest > 1 ? [...found, rest] : found;
}

/** The product of two polynomials over the field of two, as bits, reduced by a third of the degree given. */
function product(a: number, b: number, by: number, degree: number): number {
  let sum = 0;
  let shifted = a;
  for (let rest = b; rest > 0; rest >>>= 1) {
    if (rest & 1) sum ^= shifted;
    shifted <<= 1;
    if (shifted & (1 << degree)) shifted ^= by;
  }
  return sum;
}

function powerOfX(exponent: number, by: number, degree: number): number {
  let result = 1;
  let square = degree === 1 ? 1 : 2;
  for (let rest = exponent; rest > 0; rest = Math.floor(rest / 2)) {
    if (rest % 2 === 1) result = product(result, square, by, degree);
    square = product(square, square, by, degree);
  }
  return result;
}

/** Primitive polynomials over the field of two as bits, highest power first, by degree and then by size. */
export function* primitives(): Generator<{ readonly degree: number; readonly bits: number }, never, void> {
  for (let degree = 1; ; degree++) {
    const order = 2 ** degree - 1;
    const factors = primeFactors(order);
    for (let bits = 2 ** degree + 1; bits < 2 ** (degree + 1); bits += 2) {
      const isPrimitive =
        powerOfX(order, bits, degree) === 1 &&
        factors.every((it) => powerOfX(order / it, bits, degree) !== 1 || order === 1);
      if (isPrimitive) yield { degree, bits };
    }
  }
}
