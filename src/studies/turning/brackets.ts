import type { Progress } from '../study.ts';
import type { Spot, Track } from './track.ts';

/** Values looked at inside each bracket in one round. */
const INSIDE = 7;

const turnsBetween = (a: Spot, b: Spot): boolean => a.standing.some((it, i) => it !== b.standing[i]);

/** Values spread inside each pair of neighbours at which some limit stands otherwise, while they are apart. */
function inside(spots: readonly Spot[], tolerance: number): number[] {
  return spots.flatMap((spot, n) => {
    const next = spots[n + 1];
    if (next === undefined || next.x - spot.x <= tolerance || !turnsBetween(spot, next)) return [];
    const step = (next.x - spot.x) / (INSIDE + 1);
    return Array.from({ length: INSIDE }, (_, k) => spot.x + (k + 1) * step).filter(
      (it) => it > spot.x && it < next.x,
    );
  });
}

/** Closes in on every turn, all limits together, until it is known to the tolerance. */
export function* closeIn(track: Track, tolerance: number): Generator<Progress, void, void> {
  for (;;) {
    const values = inside(track.spots, tolerance);
    if (values.length === 0) return;
    yield* track.visit(values);
  }
}
