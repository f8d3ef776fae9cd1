import { widened } from '../stops.ts';

/** One of the two inputs that a map varies. */
export interface MapAxis {
  readonly input: string;
  readonly low: number;
  readonly high: number;
  /** Where the input stands now; it widens the range when it stands outside. */
  readonly present: number | null;
  /** A whole-number input is looked at step by step. */
  readonly whole: boolean;
  readonly only?: readonly number[] | undefined;
  /** What the input is set to in practice: 1 mm, 0.1°. The widest spot is given to this. */
  readonly grain: number;
}

/** Most whole numbers along one side. */
const MOST_STEPS = 60;

/** Values looked at along one side, rising. Throws a sentence when they cannot be. */
export function valuesOf(axis: MapAxis, fineness: number): Float64Array {
  const { low, high } = widened(axis);
  if (!axis.whole) {
    return Float64Array.from({ length: fineness }, (_, i) =>
      i === fineness - 1 ? high : low + ((high - low) * i) / (fineness - 1),
    );
  }
  const steps =
    axis.only ?? Array.from({ length: Math.floor(high) - Math.ceil(low) + 1 }, (_, i) => Math.ceil(low) + i);
  const inside = steps.filter((it) => it >= low && it <= high).sort((a, b) => a - b);
  if (inside.length > MOST_STEPS) {
    throw new RangeError(
      `A map over ${inside.length} steps of ${axis.input} was asked for: at most ${MOST_STEPS} are allowed.`,
    );
  }
  return Float64Array.from(inside);
}
