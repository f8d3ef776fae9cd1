/** A point of a scene, mm; x to the right of the sheet, y up it. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** A rectangle of a scene, mm. */
export interface Box {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
}

export const point = (x: number, y: number): Point => ({ x, y });
export const add = (a: Point, b: Point): Point => ({ x: a.x + b.x, y: a.y + b.y });
export const minus = (a: Point, b: Point): Point => ({ x: a.x - b.x, y: a.y - b.y });
export const dot = (a: Point, b: Point): number => a.x * b.x + a.y * b.y;
export const between = (a: Point, b: Point, share = 0.5): Point => ({
  x: a.x + (b.x - a.x) * share,
  y: a.y + (b.y - a.y) * share,
});

/** `a` moved by `along` in direction `u` and by `across` in direction `v`. */
export const moved = (a: Point, u: Point, along: number, v: Point = u, across = 0): Point => ({
  x: a.x + u.x * along + v.x * across,
  y: a.y + u.y * along + v.y * across,
});

/** Direction of `a` with length 1; a zero vector points right. */
export function unit(a: Point): Point {
  const size = Math.hypot(a.x, a.y);
  return size > 0 ? { x: a.x / size, y: a.y / size } : { x: 1, y: 0 };
}

/** The direction a quarter turn clockwise from `a`: right of "up" is aft. */
export const clockwise = (a: Point): Point => ({ x: a.y, y: -a.x });

/** Smallest box round the points; null when there are none. */
export function boxOf(points: Iterable<Point>): Box | null {
  let box: { x0: number; y0: number; x1: number; y1: number } | null = null;
  for (const { x, y } of points) {
    if (box === null) box = { x0: x, y0: y, x1: x, y1: y };
    box.x0 = Math.min(box.x0, x);
    box.y0 = Math.min(box.y0, y);
    box.x1 = Math.max(box.x1, x);
    box.y1 = Math.max(box.y1, y);
  }
  return box;
}

export const widened = (box: Box, x: number, y = x): Box => ({
  x0: box.x0 - x,
  y0: box.y0 - y,
  x1: box.x1 + x,
  y1: box.y1 + y,
});
