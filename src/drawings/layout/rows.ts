import type { Dimension, Scene } from '../scene.ts';
import { type Block, captioned, type Letterings } from './block.ts';
import type { Board } from './board.ts';
import { line, pathThrough } from './path.ts';
import { place, type Transform } from './px.ts';
import { stack } from './stack.ts';
import { extension, strokes } from './strokes.ts';

type RowSide = 'above' | 'below';

interface RowItem {
  readonly dimension: Dimension;
  readonly block: Block;
  readonly lane: number;
}

/** Between the drawing and its first row, and between a label and its line, px. */
const CLEAR = 14;
const OVER = 3;
const EDGE = 8;

/** Dimensions in rows above or below a view: shortest nearest to it, those that overlap one row further out. */
function rowItems(scene: Scene, side: RowSide, letterings: Letterings): RowItem[] {
  const length = (it: Dimension): number => Math.abs(it.to.x - it.from.x);
  const dimensions = scene.shapes
    .filter((it): it is Dimension => it.kind === 'dimension' && it.place === side)
    .sort((a, b) => length(a) - length(b));
  const items: RowItem[] = [];
  for (const dimension of dimensions) {
    const ends = (it: Dimension): [number, number] => [
      Math.min(it.from.x, it.to.x),
      Math.max(it.from.x, it.to.x),
    ];
    const [low, high] = ends(dimension);
    const inTheWay = items.filter((it) => {
      const [a, b] = ends(it.dimension);
      return a < high - 1e-6 && b > low + 1e-6;
    });
    const lane = inTheWay.length === 0 ? 0 : Math.max(...inTheWay.map((it) => it.lane)) + 1;
    const block = captioned(
      dimension.caption,
      dimension.figure,
      dimension.behind,
      dimension.state,
      'stacked',
      letterings,
    );
    items.push({ dimension, block, lane });
  }
  return items;
}

const pitch = (items: readonly RowItem[]): number =>
  Math.max(...items.map((it) => it.block.height)) + OVER + 6;
const lanes = (items: readonly RowItem[]): number => Math.max(...items.map((it) => it.lane)) + 1;

/** Height that the rows on one side take up, px. */
export function rowsHeight(scene: Scene, side: RowSide, letterings: Letterings): number {
  const items = rowItems(scene, side, letterings);
  if (items.length === 0) return scene.cropped ? 0 : EDGE;
  return EDGE + CLEAR + lanes(items) * pitch(items);
}

/** Draws the rows on one side of the scene's box. */
export function drawRows(board: Board, scene: Scene, side: RowSide, t: Transform, left: number): void {
  const items = rowItems(scene, side, board.letterings);
  if (items.length === 0) return;
  const edge = t.y - (side === 'above' ? scene.box.y1 : scene.box.y0) * t.scale;
  const step = pitch(items);
  const lineY = (lane: number): number =>
    side === 'above' ? edge - CLEAR - lane * step : edge + CLEAR + (lane + 1) * step - 6;
  for (let lane = 0; lane < lanes(items); lane++) {
    const row = items.filter((it) => it.lane === lane);
    const y = lineY(lane);
    const middle = ({ dimension }: RowItem): number =>
      (place(t, dimension.from).x + place(t, dimension.to).x) / 2;
    const places = stack(
      row.map((it) => ({ at: middle(it), size: it.block.width, rank: 0 })),
      left + EDGE,
      board.width - EDGE,
      10,
    );
    for (const [i, it] of row.entries()) {
      const { dimension, block } = it;
      const [from, to] = [place(t, dimension.from), place(t, dimension.to)];
      const [a, b] = [
        { x: from.x, y },
        { x: to.x, y },
      ];
      board.rule('extension', extension(from, a) + extension(to, b));
      board.rule('dimension', line(a, b), { a, b });
      board.rule('stroke', strokes(a, b));
      const at = places[i];
      if (at === null || at === undefined) {
        board.dropped.push(dimension.name);
        continue;
      }
      const x = at - block.width / 2;
      board.letterIfFree(dimension.name, block, x, y - OVER - block.height, 'centre');
      const reaches = x - 2 < Math.max(a.x, b.x) && x + block.width + 2 > Math.min(a.x, b.x);
      if (reaches) continue;
      // Pushed off its line, the figure keeps a shelf that runs back to it.
      const near = at < middle(it) ? Math.min(a.x, b.x) : Math.max(a.x, b.x);
      board.rule(
        'leader',
        pathThrough(
          [
            { x: near, y },
            { x: at < near ? x : x + block.width, y },
          ],
          false,
        ),
      );
    }
  }
}
