import type { Scene } from '../scene.ts';
import type { Board } from './board.ts';
import { type Detail, drawDetail, type Small } from './detail-draw.ts';
import { type Planned, planDetail } from './detail-plan.ts';
import { bestSpot, type Spot } from './detail-spot.ts';

/** What it is worth to enlarge a clearance: the worse its state the more; nothing when a label beside it says it all. */
export function weightOf({ dimension: { state, place } }: Small): number {
  if (state === 'outside') return 8;
  if (state === 'near') return 4;
  return place === 'here' ? 1 : 0;
}

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
    const spot = planned && bestSpot(board, planned, small.at, weightOf(small) > 0);
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
    const heaviest = Math.max(...waiting.map(weightOf));
    let best: Choice | null = null;
    for (const it of waiting.filter((other) => weightOf(other) === heaviest)) {
      const choice = choose(board, it, pxPerMm);
      if (choice === null) left.push(it);
      else if (best === null || choice.spot.cost < best.spot.cost) best = choice;
    }
    waiting = waiting.filter((it) => it !== best?.small && !left.includes(it));
    if (best !== null) details.push(drawDetail(board, scene, best.planned, best.spot, best.small));
  }
  return { details, left };
}
