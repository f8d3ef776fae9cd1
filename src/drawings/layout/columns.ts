import { clockwise, dot, minus, type Point, unit } from '../point.ts';
import type { Dimension, Level, Scene } from '../scene.ts';
import { type Block, captioned, type Density, type Letterings } from './block.ts';
import { type Piece, reach } from './pieces.ts';
import { stack } from './stack.ts';

/** Between drawing and dimension line, dimension line and label, label and edge of the sheet, px. */
const CLEAR = 16;
const LEADER = 14;
export const EDGE = 8;
const GAP = 3;
/** Room for a level's pointer and its leader, px. */
export const POINTER = 16;

export interface ChainItem {
  readonly dimension: Dimension;
  readonly block: Block;
  /** Direction squarely aft of what is measured. */
  readonly away: Point;
  /** Distance of the line from its points, px. */
  readonly distance: number;
  /** Middle of the label, px below the top; null when it found no room. */
  readonly labelY: number | null;
}

export interface LevelItem {
  readonly level: Level;
  readonly block: Block;
  readonly labelY: number | null;
}

/** What stands left and right of the drawing at one scale, and how much room that takes. */
export interface Columns {
  readonly chain: readonly ChainItem[];
  readonly levels: readonly LevelItem[];
  /** From the left edge of the sheet to the left end of the box, px. */
  readonly left: number;
  /** From the left end of the box to the right edge of the sheet, px. */
  readonly right: number;
  /** From the left end of the box to the labels of the chain, px. */
  readonly labelAt: number;
}

export interface ColumnsInput {
  readonly scene: Scene;
  readonly pieces: readonly Piece[];
  readonly density: Density;
  readonly letterings: Letterings;
  readonly ruleWidth: number;
  readonly height: number;
  readonly scale: number;
  /** Page y of height 0. */
  readonly zero: number;
}

/** Furthest anything reaches aft of a measured stretch, px. */
function distanceOf(dimension: Dimension, away: Point, input: ColumnsInput): number {
  const { scene, pieces, scale } = input;
  if (scene.cropped) {
    const edge =
      Math.max(scene.box.x1 - dimension.from.x, scene.box.x1 - dimension.to.x) / Math.max(0.2, away.x);
    return edge * scale + CLEAR;
  }
  const along = unit(minus(dimension.to, dimension.from));
  const low = dot(dimension.from, along);
  const high = dot(dimension.to, along);
  let furthest = 0;
  for (const piece of pieces) {
    const middle = { x: (piece.x0 + piece.x1) / 2, y: (piece.y0 + piece.y1) / 2 };
    const at = dot(middle, along);
    if (at < Math.min(low, high) - 20 || at > Math.max(low, high) + 20) continue;
    furthest = Math.max(furthest, dot(minus({ x: piece.x1, y: middle.y }, dimension.from), away));
  }
  return furthest * scale + CLEAR;
}

const overlapping = (a: Dimension, b: Dimension, along: Point): boolean => {
  const [a0, a1] = [dot(a.from, along), dot(a.to, along)];
  const [b0, b1] = [dot(b.from, along), dot(b.to, along)];
  return Math.min(Math.max(a0, a1), Math.max(b0, b1)) - Math.max(Math.min(a0, a1), Math.min(b0, b1)) > 1e-6;
};

const LANE = 22;
const rank = (state: Dimension['state']): number => (state === 'past' ? 0 : state === 'near' ? 1 : 2);

function chainItems(input: ColumnsInput): ChainItem[] {
  const { scene, density, letterings, scale, zero } = input;
  const dimensions = scene.shapes.filter(
    (it): it is Dimension => it.kind === 'dimension' && it.place === 'right',
  );
  if (dimensions.length === 0) return [];
  const placed = dimensions.map((dimension) => {
    const up = unit(minus(dimension.to, dimension.from));
    const turned = clockwise(up);
    const away = turned.x < 0 ? { x: -turned.x, y: -turned.y } : turned;
    return { dimension, away, lane: 0 };
  });
  for (const [i, item] of placed.entries()) {
    const along = unit(minus(item.dimension.to, item.dimension.from));
    const taken = placed.slice(0, i).filter((it) => overlapping(it.dimension, item.dimension, along));
    while (taken.some((it) => it.lane === item.lane)) item.lane++;
  }
  const base = Math.max(...placed.map(({ dimension, away }) => distanceOf(dimension, away, input)));
  const items = placed.map(({ dimension, away, lane }) => {
    const block = captioned(
      dimension.caption,
      dimension.figure,
      dimension.behind,
      dimension.state,
      density,
      letterings,
    );
    const distance = base + lane * LANE;
    const middle = (dimension.from.y + dimension.to.y) / 2;
    return { dimension, away, distance, block, at: zero - middle * scale - away.y * distance };
  });
  const places = stack(
    items.map(({ at, block, dimension }) => ({ at, size: block.height, rank: rank(dimension.state) })),
    EDGE,
    input.height - EDGE,
    GAP,
  );
  return items.map(({ dimension, away, distance, block }, i) => ({
    dimension,
    away,
    distance,
    block,
    labelY: places[i] ?? null,
  }));
}

function levelItems(input: ColumnsInput): LevelItem[] {
  const { scene, density, letterings, scale, zero } = input;
  const levels = scene.shapes.filter((it): it is Level => it.kind === 'level');
  const items = levels.map((level) => ({
    level,
    block: captioned(
      level.caption,
      level.figure,
      level.behind?.figure,
      null,
      density,
      letterings,
      'text-choice',
    ),
  }));
  const places = stack(
    items.map(({ level, block }, i) => ({ at: zero - level.height * scale, size: block.height, rank: i })),
    EDGE,
    input.height - EDGE,
    GAP,
  );
  return items.map((item, i) => ({ ...item, labelY: places[i] ?? null }));
}

/** Everything in the columns beside the drawing at one scale. */
export function columns(input: ColumnsInput): Columns {
  const { scene, pieces, scale, zero, ruleWidth } = input;
  const { box } = scene;
  const chain = chainItems(input);
  const levels = levelItems(input);
  // In a window the labels stand clear of it; in a whole view they may reach in where nothing is drawn.
  const bandReach = (y: number, height: number): { left: number; right: number } | null => {
    if (scene.cropped) return { left: 0, right: (box.x1 - box.x0) * scale };
    const found = reach(pieces, (zero - y - height / 2 - GAP) / scale, (zero - y + height / 2 + GAP) / scale);
    return found && { left: (found.left - box.x0) * scale, right: (found.right - box.x0) * scale };
  };
  let left = ruleWidth + (ruleWidth > 0 ? 4 : 0);
  for (const { labelY, block } of levels) {
    if (labelY === null) continue;
    const band = bandReach(labelY, block.height);
    if (band !== null) left = Math.max(left, ruleWidth + POINTER + block.width + 10 - band.left);
  }
  let labelAt = 0;
  let widest = 0;
  for (const { dimension, away, distance, block, labelY } of chain) {
    for (const end of [dimension.from, dimension.to]) {
      labelAt = Math.max(labelAt, (end.x - box.x0) * scale + away.x * distance + LEADER);
    }
    if (labelY === null) continue;
    const band = bandReach(labelY, block.height);
    if (band !== null) labelAt = Math.max(labelAt, band.right + LEADER);
    widest = Math.max(widest, block.width);
  }
  const drawing = (box.x1 - box.x0) * scale + (scene.cropped ? 0 : EDGE);
  const right = widest === 0 ? drawing : Math.max(drawing, labelAt + widest + EDGE);
  return { chain, levels, left, right, labelAt };
}
