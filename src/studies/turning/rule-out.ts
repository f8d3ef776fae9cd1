import type { Progress } from '../study.ts';
import type { Spot, Track } from './track.ts';

/** Most values looked at to rule out turns that hide between two others. */
const MOST = 4000;
/** A slope of the room up to this many times the steepest one seen is reckoned with. */
export const STEEPER = 2;
/** The least distance is settled once what is sure comes within this part of what was found. */
const SETTLED = 0.02;
/** Intervals narrower than this part of the range are not split further. */
export const NARROW = 1e-4;

/** The steepest slope of each limit's room between neighbours that stand alike, not nearer to one another than `over`. */
export function steepest(spots: readonly Spot[], over = 0): number[] {
  const [first] = spots;
  return (first?.room ?? []).map((_, limit) => {
    let most = 0;
    for (const [n, spot] of spots.entries()) {
      const next = spots[n + 1];
      if (next === undefined || next.standing[limit] !== spot.standing[limit]) continue;
      if (next.x - spot.x <= over) continue;
      const slope = Math.abs(((next.room[limit] ?? 0) - (spot.room[limit] ?? 0)) / (next.x - spot.x));
      if (slope > most) most = slope;
    }
    return most;
  });
}

/** How near to its bound a limit's room can come between two values, were it as steep as `slope` at most. */
export function nearest(a: Spot, b: Spot, limit: number, slope: number): number {
  const [from, to] = [Math.abs(a.room[limit] ?? 0), Math.abs(b.room[limit] ?? 0)];
  return (from + to - slope * (b.x - a.x)) / 2;
}

/** Least distance from its bound found for each limit at a value where it has room. */
export const closestOf = (spots: readonly Spot[], limit: number): { room: number; at: number } | null =>
  spots.reduce<{ room: number; at: number } | null>((best, { x, room }) => {
    const here = room[limit] ?? Number.NaN;
    return Number.isNaN(here) || (best !== null && Math.abs(best.room) <= Math.abs(here))
      ? best
      : { room: here, at: x };
  }, null);

const alike = (a: Spot, b: Spot, limit: number): boolean =>
  a.standing[limit] === b.standing[limit] &&
  Number.isFinite((a.room[limit] ?? Number.NaN) + (b.room[limit] ?? Number.NaN));

/**
 * Splits every interval in which a limit could still turn twice, or come nearer to its bound than was found, were its
 * room at most as steep as the slopes given.
 */
export function* ruleOut(
  track: Track,
  range: number,
  slopes: readonly number[],
): Generator<Progress, void, void> {
  let left = MOST;
  for (;;) {
    const { spots } = track;
    const closest = slopes.map((_, limit) => Math.abs(closestOf(spots, limit)?.room ?? 0));
    const turns = slopes.map((_, limit) =>
      spots.some((it, n) => n > 0 && it.standing[limit] !== spots[n - 1]?.standing[limit]),
    );
    const doubtful = spots.flatMap((spot, n): { x: number; doubt: number }[] => {
      const next = spots[n + 1];
      if (next === undefined || next.x - spot.x <= NARROW * range) return [];
      let doubt = 0;
      for (const [limit, slope] of slopes.entries()) {
        if (!alike(spot, next, limit)) continue;
        // A limit that turns anyway has no least distance to be sure of: only a hidden pair of turns matters.
        const floor = turns[limit] ? 0 : (1 - SETTLED) * (closest[limit] ?? 0);
        const short = floor - nearest(spot, next, limit, slope);
        if (short > 0) doubt = Math.max(doubt, short / (slope || 1));
      }
      return doubt > 0 ? [{ x: spot.x + (next.x - spot.x) / 2, doubt }] : [];
    });
    if (doubtful.length === 0 || left <= 0) return;
    const worst = doubtful.sort((a, b) => b.doubt - a.doubt).slice(0, left);
    left -= worst.length;
    yield* track.visit(worst.map((it) => it.x));
  }
}
