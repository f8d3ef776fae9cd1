import type { Outline } from '../scene.ts';
import { cornersOf } from '../shapes.ts';
import type { Board } from './board.ts';
import { AXIS, HATCH, LINES, SURFACE } from './occupancy.ts';
import { type Px, place, type Transform } from './px.ts';

const isNumberPx = (p: Px): boolean => Number.isFinite(p.x) && Number.isFinite(p.y);

/** Marks what the outlines take up. A large soft surface stays free inside: a detail may be set into it. */
export function occupy(board: Board, outlines: readonly Outline[], t: Transform): void {
  for (const shape of outlines) {
    if (shape.kind === 'water') {
      const y = t.y - shape.level * t.scale;
      const surface = { a: { x: 0, y }, b: { x: board.width, y } };
      board.edges.push(surface);
      board.taken.markLine(surface.a, surface.b, LINES);
    }
    if (shape.kind === 'hatch')
      board.taken.markPolygon(
        shape.points.map((p) => place(t, p)),
        HATCH,
      );
    const { points, closed } = cornersOf(shape);
    const px = points.map((p) => place(t, p));
    const count = closed ? px.length : px.length - 1;
    for (let i = 0; i < count; i++) {
      const a = px[i];
      const b = px[(i + 1) % px.length];
      if (a === undefined || b === undefined || !isNumberPx(a) || !isNumberPx(b)) continue;
      board.edges.push({ a, b });
      board.taken.markLine(a, b, shape.role === 'axis' ? AXIS : LINES);
    }
    if (closed && shape.role !== 'soft-fill') board.taken.markPolygon(px, SURFACE);
  }
}
