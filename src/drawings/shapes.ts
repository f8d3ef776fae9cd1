import { type Box, boxOf, type Point, point, widened } from './point.ts';
import type { Arc, Circle, Hatch, Outline, Polygon, Polyline, Role } from './scene.ts';

const owned = (part: string | undefined): { part?: string } => (part === undefined ? {} : { part });

export const polyline = (role: Role, points: readonly Point[], part?: string): Polyline => ({
  kind: 'polyline',
  role,
  points,
  ...owned(part),
});

export const polygon = (role: Role, points: readonly Point[], part?: string): Polygon => ({
  kind: 'polygon',
  role,
  points,
  ...owned(part),
});

export const hatch = (points: readonly Point[], other = false): Hatch => ({
  kind: 'hatch',
  role: 'hatch',
  points,
  ...(other ? { other: true as const } : {}),
});

export const circle = (role: Role, at: Point, radius: number, part?: string): Circle => ({
  kind: 'circle',
  role,
  at,
  radius,
  ...owned(part),
});

export const arc = (role: Role, at: Point, radius: number, from: number, to: number, part?: string): Arc => ({
  kind: 'arc',
  role,
  at,
  radius,
  from,
  to,
  ...owned(part),
});

export const sector = (
  role: Role,
  at: Point,
  radius: number,
  from: number,
  to: number,
  part?: string,
): Arc => ({
  ...arc(role, at, radius, from, to, part),
  sector: true,
});

/** Corners of a rectangle about `at`: half-lengths along direction `u` and across it along `v`. */
export const slab = (at: Point, u: Point, halfU: number, v: Point, halfV: number): Point[] => {
  const corner = (a: number, b: number): Point =>
    point(at.x + u.x * a * halfU + v.x * b * halfV, at.y + u.y * a * halfU + v.y * b * halfV);
  return [corner(-1, -1), corner(1, -1), corner(1, 1), corner(-1, 1)];
};

/** A long break line: straight, with one kink in the middle, where a part goes on unseen. */
export function breakLine(a: Point, b: Point, kink: number, part?: string): Polyline {
  const dx = b.x - a.x;
  const dy = b.y - a.y;
  const size = Math.hypot(dx, dy) || 1;
  const u = { x: dx / size, y: dy / size };
  const step = Math.min(kink, size / 6);
  const along = (t: number, side: number): Point =>
    point(a.x + u.x * t + u.y * side, a.y + u.y * t - u.x * side);
  const middle = size / 2;
  return polyline(
    'break',
    [
      a,
      along(middle - step, 0),
      along(middle - step / 3, step),
      along(middle + step / 3, -step),
      along(middle + step, 0),
      b,
    ],
    part,
  );
}

/** Box round drawn shapes; water and hatching do not count. */
export function boxOfShapes(shapes: readonly Outline[]): Box | null {
  const points: Point[] = [];
  for (const shape of shapes) {
    if (shape.kind === 'water' || shape.kind === 'hatch') continue;
    if (shape.kind === 'polyline' || shape.kind === 'polygon') points.push(...shape.points);
    else {
      const round = widened({ x0: shape.at.x, y0: shape.at.y, x1: shape.at.x, y1: shape.at.y }, shape.radius);
      points.push(point(round.x0, round.y0), point(round.x1, round.y1));
    }
  }
  return boxOf(points);
}
