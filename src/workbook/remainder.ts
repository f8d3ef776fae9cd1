/**
 * What is left of a dividend, with the divisor's sign; the divisor must not be 0. NaN where the quotient is too large to
 * be a number: OpenFormula (part 4, MOD) defines the remainder by it.
 */
export function remainder(dividend: number, divisor: number): number {
  if (!Number.isFinite(dividend / divisor)) return Number.NaN;
  const rest = dividend % divisor;
  return rest === 0 || rest < 0 === divisor < 0 ? rest : rest + divisor;
}
