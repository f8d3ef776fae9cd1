/** A polynomial at x, its coefficients from the constant up. */
export function polynomial(coefficients: readonly number[], x: number): number {
  let sum = 0;
  for (let i = coefficients.length - 1; i >= 0; i--) sum = sum * x + (coefficients[i] ?? 0);
  return sum;
}
