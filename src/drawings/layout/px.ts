import type { Point } from '../point.ts';

/** A place on the page, px from the top left, y down. */
export interface Px {
  readonly x: number;
  readonly y: number;
}

export interface Rect {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** mm of the scene to px of the page: `x`, `y` is where the scene's origin comes to lie. */
export interface Transform {
  readonly scale: number;
  readonly x: number;
  readonly y: number;
}

export const place = (t: Transform, p: Point): Px => ({ x: t.x + p.x * t.scale, y: t.y - p.y * t.scale });

/** Hundredths of a pixel are finer than anybody sees, and keep the text short. */
export const round = (value: number): number => Math.round(value * 100) / 100;

export const overlap = (a: Rect, b: Rect): boolean =>
  a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;

export const grown = (r: Rect, by: number): Rect => ({
  x: r.x - by,
  y: r.y - by,
  width: r.width + 2 * by,
  height: r.height + 2 * by,
});

export interface Segment {
  readonly a: Px;
  readonly b: Px;
}

/** Whether a line enters a rectangle (Liang and Barsky's clipping). */
export function crosses({ a, b }: Segment, r: Rect): boolean {
  if (Math.max(a.x, b.x) < r.x || Math.min(a.x, b.x) > r.x + r.width) return false;
  if (Math.max(a.y, b.y) < r.y || Math.min(a.y, b.y) > r.y + r.height) return false;
  const dx = b.x - a.x;
  const dy = b.y - a.y;
  let from = 0;
  let to = 1;
  const edges: readonly (readonly [number, number])[] = [
    [-dx, a.x - r.x],
    [dx, r.x + r.width - a.x],
    [-dy, a.y - r.y],
    [dy, r.y + r.height - a.y],
  ];
  for (const [step, room] of edges) {
    if (step === 0) {
      if (room <= 0) return false;
      continue;
    }
    const t = room / step;
    if (step < 0) from = Math.max(from, t);
    else to = Math.min(to, t);
    if (from >= to) return false;
  }
  return true;
}

const side = (a: Px, b: Px, p: Px): number => (b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x);

/** Whether two lines truly cross; touching at an end does not count. */
export const meet = (s: Segment, t: Segment): boolean =>
  side(s.a, s.b, t.a) * side(s.a, s.b, t.b) < 0 && side(t.a, t.b, s.a) * side(t.a, t.b, s.b) < 0;
