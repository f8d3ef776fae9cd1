/** Most whole numbers looked at. */
const MOST = 2000;

/** The values a whole-number input can have in a range, rising. Throws a sentence when they are too many or none. */
export function wholeStops(low: number, high: number, only: readonly number[] | undefined): number[] {
  if (only !== undefined) return only.filter((it) => it >= low && it <= high).sort((a, b) => a - b);
  const [first, last] = [Math.ceil(low), Math.floor(high)];
  if (last - first + 1 > MOST) {
    throw new RangeError(`${last - first + 1} whole values were asked for: at most ${MOST} are allowed.`);
  }
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => first + i);
}
