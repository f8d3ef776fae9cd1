import { type Px, round } from './px.ts';

/** Distance between hatch lines, px square to them. */
const PITCH = 4.5;
/** A surface with more lines than this is filled too finely to read; the rest is left clear. */
const MOST = 400;

/** 45° lines inside a polygon, as one path. */
export function hatchLines(points: readonly Px[], other: boolean): string {
  // Along a line x + y (or x − y) is constant: that is the coordinate to step through.
  const sign = other ? -1 : 1;
  const level = (p: Px): number => p.x + sign * p.y;
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (const p of points) {
    low = Math.min(low, level(p));
    high = Math.max(high, level(p));
  }
  const step = PITCH * Math.SQRT2;
  let d = '';
  let drawn = 0;
  for (let c = Math.ceil(low / step) * step; c < high && drawn < MOST; c += step, drawn++) {
    const hits: Px[] = [];
    for (let i = 0; i < points.length; i++) {
      const a = points[i];
      const b = points[(i + 1) % points.length];
      if (a === undefined || b === undefined) continue;
      const from = level(a) - c;
      const to = level(b) - c;
      if (from < 0 === to < 0) continue;
      const t = from / (from - to);
      hits.push({ x: a.x + (b.x - a.x) * t, y: a.y + (b.y - a.y) * t });
    }
    hits.sort((a, b) => a.x - b.x);
    for (let i = 0; i + 1 < hits.length; i += 2) {
      const a = hits[i];
      const b = hits[i + 1];
      if (a !== undefined && b !== undefined) d += `M${round(a.x)} ${round(a.y)}L${round(b.x)} ${round(b.y)}`;
    }
  }
  return d;
}
