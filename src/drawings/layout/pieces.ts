import type { Box } from '../point.ts';
import type { Outline } from '../scene.ts';
import { cornersOf } from '../shapes.ts';

/** A short run of outline: the box round it, mm. */
export type Piece = Box;

/** Longest run, mm: finer would not move a label by a pixel anybody sees. */
const LONGEST = 40;
const MOST = 60;

/** Outlines cut into short runs, so that "how far out does anything reach at this height" is quickly told. */
export function piecesOf(shapes: readonly Outline[]): Piece[] {
  const pieces: Piece[] = [];
  for (const shape of shapes) {
    const { points, closed } = cornersOf(shape);
    const count = closed ? points.length : points.length - 1;
    for (let i = 0; i < count; i++) {
      const a = points[i];
      const b = points[(i + 1) % points.length];
      if (a === undefined || b === undefined) continue;
      const runs = Math.min(MOST, Math.max(1, Math.ceil(Math.abs(b.y - a.y) / LONGEST)));
      for (let k = 0; k < runs; k++) {
        const from = k / runs;
        const to = (k + 1) / runs;
        const [ax, ay] = [a.x + (b.x - a.x) * from, a.y + (b.y - a.y) * from];
        const [bx, by] = [a.x + (b.x - a.x) * to, a.y + (b.y - a.y) * to];
        pieces.push({
          x0: Math.min(ax, bx),
          y0: Math.min(ay, by),
          x1: Math.max(ax, bx),
          y1: Math.max(ay, by),
        });
      }
    }
  }
  return pieces;
}

/** Leftmost and rightmost reach of anything between two heights; null when nothing is there. */
export function reach(
  pieces: readonly Piece[],
  low: number,
  high: number,
): { left: number; right: number } | null {
  let found: { left: number; right: number } | null = null;
  for (const piece of pieces) {
    if (piece.y1 < low || piece.y0 > high) continue;
    if (found === null) found = { left: piece.x0, right: piece.x1 };
    if (piece.x0 < found.left) found.left = piece.x0;
    if (piece.x1 > found.right) found.right = piece.x1;
  }
  return found;
}
