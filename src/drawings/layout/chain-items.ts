import { clockwise, dot, minus, type Point, unit } from '../point.ts';
import type { Dimension, Scene } from '../scene.ts';
import { type Block, captioned, type Density, type Letterings } from './block.ts';
import type { Piece } from './pieces.ts';

/** A dimension of the column aft of the drawing, before the drawing has a scale. */
export interface ChainItem {
  readonly dimension: Dimension;
  readonly block: Block;
  /** Direction squarely aft of what is measured. */
  readonly away: Point;
  /** Dimensions that would lie over one another stand in lanes, the first nearest to the drawing. */
  readonly lane: number;
  /** Furthest anything reaches aft of the measured points, mm. */
  readonly reach: number;
}

/** Stretches this close above or below count as beside the measured one, mm. */
const BESIDE = 20;

function reachOf({ from, to }: Dimension, away: Point, scene: Scene, pieces: readonly Piece[]): number {
  if (scene.cropped) return (scene.box.x1 - Math.min(from.x, to.x)) / Math.max(0.2, away.x);
  const along = unit(minus(to, from));
  const ends = [dot(from, along), dot(to, along)] as const;
  const low = Math.min(...ends) - BESIDE;
  const high = Math.max(...ends) + BESIDE;
  let furthest = 0;
  for (const { x0, y0, x1, y1 } of pieces) {
    const y = (y0 + y1) / 2;
    const at = ((x0 + x1) / 2) * along.x + y * along.y;
    if (at < low || at > high) continue;
    furthest = Math.max(furthest, (x1 - from.x) * away.x + (y - from.y) * away.y);
  }
  return furthest;
}

function overlapping(a: Dimension, b: Dimension): boolean {
  const along = unit(minus(a.to, a.from));
  const span = (it: Dimension): readonly [number, number] => {
    const [from, to] = [dot(it.from, along), dot(it.to, along)];
    return from < to ? [from, to] : [to, from];
  };
  const [a0, a1] = span(a);
  const [b0, b1] = span(b);
  return Math.min(a1, b1) - Math.max(a0, b0) > 1e-6;
}

/** The dimensions of the column, each in its lane, with its label. */
export function chainItems(
  scene: Scene,
  pieces: readonly Piece[],
  density: Density,
  letterings: Letterings,
): ChainItem[] {
  const items: ChainItem[] = [];
  for (const dimension of scene.shapes) {
    if (dimension.kind !== 'dimension' || dimension.place !== 'right') continue;
    const turned = clockwise(unit(minus(dimension.to, dimension.from)));
    const away = turned.x < 0 ? { x: -turned.x, y: -turned.y } : turned;
    const taken = new Set(items.filter((it) => overlapping(it.dimension, dimension)).map((it) => it.lane));
    let lane = 0;
    while (taken.has(lane)) lane++;
    const { caption, figure, behind, state } = dimension;
    const block = captioned(caption, figure, behind, state, density, letterings);
    items.push({ dimension, block, away, lane, reach: reachOf(dimension, away, scene, pieces) });
  }
  return items;
}
