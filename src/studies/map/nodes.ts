/**
 * Where along one side of a map its values stand. A measure is known at its values and read off between them; a whole
 * number holds from half a step before it to half a step after it, and jumps there: it has two nodes, one at each end.
 */
export interface Nodes {
  /** Places, never falling. */
  readonly at: Float64Array;
  /** Which of the values holds at each. */
  readonly of: Uint16Array;
}

/** The nodes of one side's values, which rise. */
export function nodesOf(values: ArrayLike<number>, whole: boolean): Nodes {
  const count = values.length;
  if (!whole) {
    return { at: Float64Array.from(values), of: Uint16Array.from({ length: count }, (_, i) => i) };
  }
  const value = (i: number): number => values[i] as number;
  const between = (i: number): number =>
    i < 0 ? value(0) - 0.5 : i >= count - 1 ? value(count - 1) + 0.5 : (value(i) + value(i + 1)) / 2;
  return {
    at: Float64Array.from({ length: 2 * count }, (_, n) => between((n >> 1) - 1 + (n & 1))),
    of: Uint16Array.from({ length: 2 * count }, (_, n) => n >> 1),
  };
}

/** The stretch between two nodes that a place lies in, and how far along it; ends hold for what lies beyond. */
export function stretchAt({ at }: Nodes, place: number): { readonly from: number; readonly share: number } {
  let [low, high] = [0, at.length - 1];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if ((at[middle] as number) <= place) low = middle;
    else high = middle;
  }
  const [a, b] = [at[low] as number, at[high] as number];
  return { from: low, share: b > a ? Math.min(1, Math.max(0, (place - a) / (b - a))) : 0 };
}
