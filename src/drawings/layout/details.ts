import type { Scene } from '../scene.ts';
import type { Board } from './board.ts';
import { type Detail, drawDetail, type Small } from './detail-draw.ts';
import { type Planned, planDetail } from './detail-plan.ts';
import { bestSpot, type Spot } from './detail-spot.ts';

/** What is past comes first, then what is near, then what has no label of its own beside the drawing. */
const urgency = ({ dimension: { state, place } }: Small): number =>
  (state === 'past' ? 0 : state === 'near' ? 2 : 4) + (place === 'here' ? 0 : 1);

/** Radii a detail is tried with, px, roomiest first: by the page it has to find room on. */
function radii(board: Board): readonly number[] {
  const largest = Math.min(56, Math.max(44, Math.min(board.width, board.height) * 0.13));
  return [largest, 40];
}

/** How much longer, px, the leader of a roomier detail may be. */
const ROOMIER = 70;

interface Choice {
  readonly small: Small;
  readonly planned: Planned;
  readonly spot: Spot;
}

/** The better of a roomy and a small view of one clearance; null when neither finds room. */
function choose(board: Board, small: Small, pxPerMm: number): Choice | null {
  let best: Choice | null = null;
  for (const least of radii(board)) {
    const planned = planDetail(small.dimension, board, pxPerMm, least);
    const spot = planned && bestSpot(board, planned, small.at);
    if (planned === null || spot === null) continue;
    if (best === null || spot.cost + ROOMIER < best.spot.cost) best = { small, planned, spot };
  }
  return best;
}

/** Draws the enlarged views that find room, most urgent first, and of those the ones that are easiest to place. */
export function drawDetails(
  board: Board,
  scene: Scene,
  small: readonly Small[],
  pxPerMm: number,
): { details: Detail[]; left: Small[] } {
  const details: Detail[] = [];
  const left: Small[] = [];
  let waiting = [...small];
  while (waiting.length > 0) {
    const first = Math.min(...waiting.map(urgency));
    let best: Choice | null = null;
    for (const it of waiting.filter((other) => urgency(other) === first)) {
      const choice = choose(board, it, pxPerMm);
      if (choice === null) left.push(it);
      else if (best === null || choice.spot.cost < best.spot.cost) best = choice;
    }
    waiting = waiting.filter((it) => it !== best?.small && !left.includes(it));
    if (best !== null) details.push(drawDetail(board, scene, best.planned, best.spot, best.small));
  }
  return { details, left };
}
