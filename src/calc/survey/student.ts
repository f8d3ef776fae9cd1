/**
 * Share of Student's distribution further out than t on either side, for a whole number of degrees of freedom: the
 * finite series of Abramowitz and Stegun 26.7.3 and 26.7.4.
 */
export function studentTails(t: number, freedom: number): number {
  const angle = Math.atan2(Math.abs(t), Math.sqrt(freedom));
  const [sin, cos] = [Math.sin(angle), Math.cos(angle)];
  const isOdd = freedom % 2 === 1;
  let term = isOdd ? cos : 1;
  let sum = freedom === 1 ? 0 : term;
  for (let k = isOdd ? 3 : 2; k <= freedom - 2; k += 2) {
    term *= (cos * cos * (k - 1)) / k;
    sum += term;
  }
  const inside = isOdd ? (2 / Math.PI) * (angle + sin * sum) : sin * sum;
  return Math.max(0, 1 - inside);
}
