/** One input's part in a result: its slope times its standard uncertainty, in the result's unit, with its sign. */
export interface Part {
  readonly part: number;
  /** Degrees of freedom of that uncertainty; without end when absent. */
  readonly freedom?: number | undefined;
}

/**
 * The law of propagation of uncertainty, first order, correlations included (JCGM 100:2008, 5.1.2 and 5.2.2): the
 * combined standard uncertainty, in the result's unit.
 */
export function combined(parts: readonly Part[], correlation?: (i: number, j: number) => number): number {
  let square = 0;
  for (const [i, { part }] of parts.entries()) {
    square += part * part;
    if (correlation === undefined || part === 0) continue;
    for (let j = 0; j < i; j++) {
      const other = parts[j]?.part ?? 0;
      if (other !== 0) square += 2 * correlation(i, j) * part * other;
    }
  }
  // Opposite parts that cancel may leave less than nothing after rounding.
  return Math.sqrt(Math.max(0, square));
}

/** Effective degrees of freedom of a combined uncertainty, by Welch and Satterthwaite (JCGM 100:2008, G.4.1). */
export function effectiveFreedom(parts: readonly Part[], combinedUncertainty: number): number {
  let sum = 0;
  for (const { part, freedom } of parts) {
    if (freedom !== undefined && freedom !== Number.POSITIVE_INFINITY) sum += part ** 4 / freedom;
  }
  return sum === 0 ? Number.POSITIVE_INFINITY : combinedUncertainty ** 4 / sum;
}

/** The most by which a result that is linear can be off when every input is off by all it may: the sum of sizes. */
export const worstSum = (parts: readonly number[]): number =>
  parts.reduce((sum, it) => sum + Math.abs(it), 0);
