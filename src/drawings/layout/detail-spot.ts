import type { Board } from './board.ts';
import type { Planned } from './detail-plan.ts';
import { AXIS, DETAIL, LINES, SURFACE, TEXT } from './occupancy.ts';
import { meet, type Px } from './px.ts';

const MARGIN = 4;
/** What it costs, in px of leader, to cross a cell that is taken, or another thin line. */
const PRICES = { lines: 5, text: 80, detail: 200 };
const OVER_LINE = 400;
/** Dearer than this a leader crosses what it should not: only a detail that presses may. */
const BEARABLE = 380;

/** Middle of the circle, and what its leader costs. */
export interface Spot extends Px {
  /** The name stands over the circle, away from the leader. */
  readonly above: boolean;
  readonly cost: number;
}

/** Best free place for a detail: near its source, its leader crossing as little as can be. Null when there is none. */
export function bestSpot(board: Board, it: Planned, source: Px, presses: boolean): Spot | null {
  const { width: wide, height: tall } = it.caption;
  const width = Math.max(2 * it.r, wide) + 2 * MARGIN;
  const height = 2 * it.r + tall + 2 * MARGIN;
  let best: Spot | null = null;
  let least = presses ? Number.POSITIVE_INFINITY : BEARABLE;
  board.taken.places(width, height, LINES | SURFACE | TEXT | DETAIL, 2, (left, top) => {
    const x = left + width / 2;
    // The name goes to the side that the leader does not come from.
    const below = top + MARGIN + it.r;
    const above = source.y - below > Math.abs(source.x - x) * 0.9;
    const y = above ? below + tall : below;
    const centre = { x, y };
    const distance = Math.hypot(x - source.x, y - source.y);
    if (distance >= least) return;
    const named = {
      x: x - wide / 2,
      y: above ? top + MARGIN : top + height - MARGIN - tall,
      width: wide,
      height: tall,
    };
    if (!board.taken.free(named, AXIS)) return;
    const crossed = board.lines.filter((segment) => meet(segment, { a: source, b: centre })).length;
    const cost = distance + OVER_LINE * crossed + board.taken.price(source, centre, PRICES);
    if (cost >= least) return;
    least = cost;
    best = { x, y, above, cost };
  });
  return best;
}
