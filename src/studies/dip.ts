import type { LimitSample } from './evaluator.ts';
import { standingOf } from './standing.ts';
import type { Progress } from './study.ts';

interface Point {
  readonly x: number;
  readonly limits: readonly LimitSample[];
}

type Look<P> = (x: number) => Generator<Progress, P, void>;

/** Most evaluations spent on one dip. */
const MOST_LOOKS = 12;

/** Golden section: the smaller part of 1 when both parts and the whole stand in one ratio. */
const GOLDEN = (3 - Math.sqrt(5)) / 2;

/**
 * Whether a limit's room comes nearest to nothing at the middle of three points, and so near that it may be used up
 * between them: its next fall would be as great as its last.
 */
function mayTouch(left: LimitSample, middle: LimitSample, right: LimitSample): boolean {
  const [a, b, c] = [left.room, middle.room, right.room];
  if (a === null || b === null || c === null) return false;
  const side = Math.sign(b);
  if (Math.sign(a) !== side || Math.sign(c) !== side) return false;
  const [before, here, after] = [Math.abs(a), Math.abs(b), Math.abs(c)];
  return here <= before && here <= after && here < Math.max(before - here, after - here);
}

/** Walks down one dip by the golden section until the limit is seen to turn or the looks are used up. */
function* searchDip<P extends Point>(
  left: P,
  right: P,
  limit: number,
  look: Look<P>,
): Generator<Progress, P[], void> {
  const start = left.limits[limit];
  const room = (point: P): number => Math.abs(point.limits[limit]?.room ?? Number.POSITIVE_INFINITY);
  const turned = (point: P): boolean => {
    const there = point.limits[limit];
    return start !== undefined && there !== undefined && standingOf(there) !== standingOf(start);
  };
  let [a, d] = [left.x, right.x];
  let b = yield* look(a + GOLDEN * (d - a));
  let c = yield* look(d - GOLDEN * (d - a));
  const found = [b, c];
  while (found.length < MOST_LOOKS && !found.some(turned)) {
    if (room(b) < room(c)) {
      [d, c] = [c.x, b];
      b = yield* look(a + GOLDEN * (d - a));
      found.push(b);
    } else {
      [a, b] = [b.x, c];
      c = yield* look(d - GOLDEN * (d - a));
      found.push(c);
    }
  }
  return found;
}

/** Extra points wherever a limit's room dips so near its bound that it may turn and turn back between two points. */
export function* searchDips<P extends Point>(
  points: readonly P[],
  look: Look<P>,
): Generator<Progress, P[], void> {
  const found: P[] = [];
  for (let n = 1; n + 1 < points.length; n++) {
    const [left, middle, right] = [points[n - 1], points[n], points[n + 1]];
    if (left === undefined || middle === undefined || right === undefined) continue;
    for (const [i, limit] of middle.limits.entries()) {
      const [before, after] = [left.limits[i], right.limits[i]];
      if (before === undefined || after === undefined || !mayTouch(before, limit, after)) continue;
      found.push(...(yield* searchDip(left, right, i, look)));
    }
  }
  return found;
}
