/** What a sweep walks along. */
export interface Range {
  readonly low: number;
  readonly high: number;
  /** Where the input stands now; it is looked at exactly, and widens the range when it stands outside. */
  readonly present: number | null;
  /** A whole-number input is looked at step by step. */
  readonly whole: boolean;
  /** The only values a whole-number input can have. */
  readonly only?: readonly number[] | undefined;
  /** How many evenly spread values of another input are looked at, both ends among them; at least 2. */
  readonly points: number;
}

/** Most whole numbers looked at in one sweep. */
const MOST_STEPS = 400;

/** The range with the present value inside it. Throws when an end is not a number or the ends are swapped. */
export function widened({ low, high, present }: Pick<Range, 'low' | 'high' | 'present'>): {
  readonly low: number;
  readonly high: number;
} {
  if (!(Number.isFinite(low) && Number.isFinite(high) && low < high)) {
    throw new RangeError(
      `A sweep from ${low} to ${high} was asked for: it must go from a number to a greater one.`,
    );
  }
  return present === null ? { low, high } : { low: Math.min(low, present), high: Math.max(high, present) };
}

function steps(low: number, high: number, range: Range): number[] {
  if (range.only !== undefined)
    return range.only.filter((it) => it >= low && it <= high).sort((a, b) => a - b);
  const [first, last] = [Math.ceil(low), Math.floor(high)];
  const count = last - first + 1;
  if (count > MOST_STEPS) {
    throw new RangeError(`A sweep over ${count} steps was asked for: at most ${MOST_STEPS} are allowed.`);
  }
  return Array.from({ length: count }, (_, i) => first + i);
}

/** The values a sweep looks at, rising, the present one among them. Throws a sentence when the range cannot be. */
export function stopsOf(range: Range): number[] {
  const { low, high } = widened(range);
  if (range.whole) return steps(low, high, range);
  if (!Number.isInteger(range.points) || range.points < 2) {
    throw new RangeError(`A sweep over ${range.points} points was asked for: it needs 2 or more.`);
  }
  const last = range.points - 1;
  const spread = Array.from({ length: range.points }, (_, i) =>
    i === last ? high : low + ((high - low) * i) / last,
  );
  const { present } = range;
  if (present === null || spread.includes(present)) return spread;
  return [...spread, present].sort((a, b) => a - b);
}
