import type { Board } from './board.ts';
import type { PlacedChainItem } from './columns.ts';
import { line, pathThrough } from './path.ts';
import { type Px, place, type Transform } from './px.ts';
import { extension, strokes } from './strokes.ts';

/** Ends of a chain dimension's line on the page. */
export function chainLine({ dimension, away, distance }: PlacedChainItem, t: Transform): { a: Px; b: Px } {
  const set = (p: Px): Px => ({ x: p.x + away.x * distance, y: p.y - away.y * distance });
  return { a: set(place(t, dimension.from)), b: set(place(t, dimension.to)) };
}

/** The dimensions in the column aft of the drawing, each with its label beside it. */
export function drawChain(
  board: Board,
  items: readonly PlacedChainItem[],
  t: Transform,
  labelX: number,
): void {
  for (const item of items) {
    const { dimension, block, labelY } = item;
    const { a, b } = chainLine(item, t);
    board.rule('extension', extension(place(t, dimension.from), a) + extension(place(t, dimension.to), b));
    board.rule('dimension', line(a, b), { a, b });
    board.rule('stroke', strokes(a, b));
    if (labelY === null) {
      board.dropped.push(dimension.name);
      continue;
    }
    const middle = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
    const points =
      Math.abs(labelY - middle.y) < 0.5
        ? [middle, { x: labelX - 4, y: middle.y }]
        : [middle, { x: labelX - 9, y: labelY }, { x: labelX - 4, y: labelY }];
    const [from, to] = [points[0], points[1]];
    board.rule('leader', pathThrough(points, false), ...(from && to ? [{ a: from, b: to }] : []));
    board.letterIfFree(dimension.name, block, labelX, labelY - block.height / 2);
  }
}
