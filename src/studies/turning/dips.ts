import type { Progress } from '../study.ts';
import type { Spot, Track } from './track.ts';

const ROUNDS = 24;
const INSIDE = 7;

/** Neighbours on both sides of each limit's nearest approach to its bound, where it lies between others like it. */
function dip(spots: readonly Spot[], limit: number): readonly [Spot, Spot] | undefined {
  let best: number | undefined;
  for (const [n, spot] of spots.entries()) {
    const here = Math.abs(spot.room[limit] ?? Number.NaN);
    if (Number.isNaN(here)) continue;
    if (best === undefined || here < Math.abs(spots[best]?.room[limit] ?? 0)) best = n;
  }
  if (best === undefined) return undefined;
  const [before, after] = [spots[Math.max(0, best - 1)], spots[Math.min(spots.length - 1, best + 1)]];
  return before === undefined || after === undefined ? undefined : [before, after];
}

/** Follows every limit's nearest approach to its bound down to the tolerance, all limits together. */
export function* followDips(track: Track, tolerance: number): Generator<Progress, void, void> {
  const limits = track.spots[0]?.room.length ?? 0;
  for (let round = 0; round < ROUNDS; round++) {
    const values: number[] = [];
    for (let limit = 0; limit < limits; limit++) {
      const around = dip(track.spots, limit);
      if (around === undefined) continue;
      const [{ x: low }, { x: high }] = around;
      if (high - low <= tolerance) continue;
      for (let k = 1; k <= INSIDE; k++) values.push(low + ((high - low) * k) / (INSIDE + 1));
    }
    if (values.length === 0) return;
    yield* track.visit(values);
  }
}
