import type { SweepPoint } from '../../studies/sweep.ts';

/** A result read off a sweep. */
export interface Read {
  readonly value: number | null;
  /** Between two values that were worked out, read off the line. */
  readonly about: boolean;
  readonly refused: string | undefined;
}

/** A result at a value: as worked out there, else read off the line between its neighbours. */
export function readAt(points: readonly SweepPoint[], result: number, x: number): Read {
  const after = points.findIndex((it) => it.x >= x);
  const [right, left] = [points[after] ?? points.at(-1), points[after - 1]];
  const b = right?.values[result] ?? null;
  if (right === undefined || right.x === x || left === undefined) {
    return { value: b, about: false, refused: right?.refused };
  }
  const a = left.values[result] ?? null;
  if (a === null || b === null) return { value: null, about: true, refused: left.refused ?? right.refused };
  return { value: a + ((b - a) * (x - left.x)) / (right.x - left.x), about: true, refused: undefined };
}
