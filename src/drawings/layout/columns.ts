import type { Level, Scene } from '../scene.ts';
import { type Block, captioned, type Density, type Letterings } from './block.ts';
import { type ChainItem, chainItems } from './chain-items.ts';
import { type Piece, reach } from './pieces.ts';
import { stack } from './stack.ts';

/** Between drawing and dimension line, dimension line and label, label and edge of the sheet, px. */
const CLEAR = 16;
const LEADER = 14;
const LANE = 22;
export const EDGE = 8;
const GAP = 3;
/** Room for a level's pointer and its leader, px. */
export const POINTER = 16;

export interface LevelItem {
  readonly level: Level;
  readonly block: Block;
}

/** The lettering beside a drawing with labels of one density, before the drawing has a scale. */
export interface Lettered {
  readonly scene: Scene;
  readonly pieces: readonly Piece[];
  readonly ruleWidth: number;
  readonly height: number;
  readonly chain: readonly ChainItem[];
  readonly levels: readonly LevelItem[];
}

export interface PlacedChainItem extends ChainItem {
  /** Distance of the line from its points, px. */
  readonly distance: number;
  /** Middle of the label, px below the top; null when it found no room. */
  readonly labelY: number | null;
}

export interface PlacedLevelItem extends LevelItem {
  readonly labelY: number | null;
}

/** What stands left and right of the drawing at one scale, and how much room that takes. */
export interface Columns {
  readonly chain: readonly PlacedChainItem[];
  readonly levels: readonly PlacedLevelItem[];
  /** From the left edge of the sheet to the left end of the box, px. */
  readonly left: number;
  /** From the left end of the box to the right edge of the sheet, px. */
  readonly right: number;
  /** From the left end of the box to the labels of the chain, px. */
  readonly labelAt: number;
}

export function letter(
  scene: Scene,
  pieces: readonly Piece[],
  ruleWidth: number,
  height: number,
  density: Density,
  letterings: Letterings,
): Lettered {
  const levels: LevelItem[] = [];
  for (const level of scene.shapes) {
    if (level.kind !== 'level') continue;
    const { caption, figure, behind } = level;
    const block = captioned(caption, figure, behind?.figure, null, density, letterings, 'text-choice');
    levels.push({ level, block });
  }
  return { scene, pieces, ruleWidth, height, chain: chainItems(scene, pieces, density, letterings), levels };
}

const rank = (state: ChainItem['dimension']['state']): number =>
  state === 'outside' ? 0 : state === 'near' ? 1 : 2;

function placeChain({ chain, height }: Lettered, scale: number, zero: number): PlacedChainItem[] {
  const base = Math.max(...chain.map((it) => it.reach)) * scale + CLEAR;
  const placed = chain.map((it) => {
    const { from, to, state } = it.dimension;
    const distance = base + it.lane * LANE;
    const at = zero - ((from.y + to.y) / 2) * scale - it.away.y * distance;
    return { it, distance, wanted: { at, size: it.block.height, rank: rank(state) } };
  });
  const wanted = placed.map((it) => it.wanted);
  const places = stack(wanted, EDGE, height - EDGE, GAP);
  return placed.map(({ it, distance }, i) => ({ ...it, distance, labelY: places[i] ?? null }));
}

function placeLevels({ levels, height }: Lettered, scale: number, zero: number): PlacedLevelItem[] {
  // Labels of what is above the water stay above its line, if they can.
  const bottom = height - EDGE;
  const dry = levels.every((it) => it.level.height >= 0);
  const needed = levels.reduce((sum, it) => sum + it.block.height + GAP, 0);
  const low = dry && zero - GAP - EDGE >= needed ? Math.min(bottom, zero - GAP) : bottom;
  const wanted = levels.map((it, i) => ({
    at: zero - it.level.height * scale,
    size: it.block.height,
    rank: i,
  }));
  const places = stack(wanted, EDGE, low, GAP);
  return levels.map((it, i) => ({ ...it, labelY: places[i] ?? null }));
}

/** Everything in the columns beside the drawing at one scale; `zero` is the page's y of height 0. */
export function columns(lettered: Lettered, scale: number, zero: number): Columns {
  const { scene, pieces, ruleWidth } = lettered;
  const { box } = scene;
  const chain = lettered.chain.length === 0 ? [] : placeChain(lettered, scale, zero);
  const levels = placeLevels(lettered, scale, zero);
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
