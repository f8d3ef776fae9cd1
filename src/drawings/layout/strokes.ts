import { line } from './path.ts';
import type { Px } from './px.ts';

/** Half the length of an oblique stroke, px, and how far extension lines start off and run past. */
const HALF = 4.5;
const OFF = 3;
const PAST = 3;

/** Oblique 45° strokes at both ends of a dimension line. */
export const strokes = (a: Px, b: Px): string =>
  [a, b].map((p) => line({ x: p.x - HALF, y: p.y + HALF }, { x: p.x + HALF, y: p.y - HALF })).join('');

/** Extension line from a measured point to the end of its dimension line; empty when there is nothing between. */
export function extension(from: Px, to: Px): string {
  const dx = to.x - from.x;
  const dy = to.y - from.y;
  const size = Math.hypot(dx, dy);
  if (size <= OFF) return '';
  const u = { x: dx / size, y: dy / size };
  return line(
    { x: from.x + u.x * OFF, y: from.y + u.y * OFF },
    { x: to.x + u.x * PAST, y: to.y + u.y * PAST },
  );
}
