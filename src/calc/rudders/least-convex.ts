const INVERSE_GOLDEN = (Math.sqrt(5) - 1) / 2;

/** What rounding alone may make of a flat stretch, in the function's unit. */
const NOISE = 1e-10;

/**
 * Least value of a convex function between two ends. A probe beside each end tells whether the least lies at that
 * end, as it does for nearly every mount; otherwise the range is narrowed by the golden section to `width`.
 */
export function leastConvex(f: (z: number) => number, from: number, to: number, width = 1e-9): number {
  const atFrom = f(from);
  const atTo = f(to);
  const span = to - from;
  if (span <= width) return Math.min(atFrom, atTo);
  const probe = Math.min(1e-3, span / 4);
  if (f(from + probe) > atFrom + NOISE) return atFrom;
  if (f(to - probe) > atTo + NOISE) return atTo;
  // A convex function cannot dip further below its middle than its ends stand apart from it.
  const middle = f((from + to) / 2);
  const least = Math.min(atFrom, middle, atTo);
  if (Math.max(atFrom, middle, atTo) - least <= NOISE) return least;
  let low = from;
  let high = to;
  let a = high - span * INVERSE_GOLDEN;
  let b = low + span * INVERSE_GOLDEN;
  let fa = f(a);
  let fb = f(b);
  while (high - low > width) {
    if (fa <= fb) {
      high = b;
      b = a;
      fb = fa;
      a = high - (high - low) * INVERSE_GOLDEN;
      fa = f(a);
    } else {
      low = a;
      a = b;
      fa = fb;
      b = low + (high - low) * INVERSE_GOLDEN;
      fb = f(b);
    }
  }
  return Math.min(fa, fb, least);
}
