import { cos, sin } from '../calc/angle.ts';
import { type Box, boxOf, type Point, point } from './point.ts';
import type { Arc, Circle, Hatch, Outline, Polygon, Polyline, Role, Shape } from './scene.ts';

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

/** Straight sides that stand for a circle. */
const SIDES = 16;

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

/** Corners of an outline; a circle or arc as a many-sided figure. */
export function cornersOf(shape: Outline): { points: readonly Point[]; closed: boolean } {
  switch (shape.kind) {
    case 'water':
    case 'hatch':
      return { points: [], closed: false };
    case 'polyline':
      return { points: shape.points, closed: false };
    case 'polygon':
      return { points: shape.points, closed: true };
    default: {
      const [from, to] = shape.kind === 'arc' ? [shape.from, shape.to] : [0, 360];
      const points = Array.from({ length: SIDES + 1 }, (_, i) => {
        const angle = from + ((to - from) * i) / SIDES;
        return { x: shape.at.x + shape.radius * cos(angle), y: shape.at.y + shape.radius * sin(angle) };
      });
      const closed = shape.kind === 'circle' || shape.sector === true;
      return { points: closed && shape.kind === 'arc' ? [...points, shape.at] : points, closed };
    }
  }
}

/** Box round drawn shapes; water and hatching do not count. */
export const boxOfShapes = (shapes: readonly Outline[]): Box | null =>
  boxOf(shapes.flatMap((shape) => cornersOf(shape).points));

/** Whether a shape is drawn to scale, rather than lettered beside what is. */
export const isDrawn = (shape: Shape): shape is Outline =>
  shape.kind !== 'label' && shape.kind !== 'level' && shape.kind !== 'dimension' && shape.kind !== 'angle';
