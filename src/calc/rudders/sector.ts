/**
 * What a chord line sweeps while it swings about its axis: a sector with apex (x, y), opening about the direction
 * (ux, uy) by an angle of cosine and sine (c, s) to each side, at most 90°, with radius r in mm. Convex by that bound.
 */
export interface Sector {
  x: number;
  y: number;
  ux: number;
  uy: number;
  c: number;
  s: number;
  r: number;
}

/** Distance from a point to a sector, mm; 0 inside. */
export function pointToSector(px: number, py: number, q: Sector): number {
  const dx = px - q.x;
  const dy = py - q.y;
  const along = dx * q.ux + dy * q.uy;
  const across = Math.abs(dx * q.uy - dy * q.ux);
  if (along >= 0 && across * q.c <= along * q.s) {
    return Math.max(0, Math.sqrt(along * along + across * across) - q.r);
  }
  const t = Math.min(q.r, Math.max(0, along * q.c + across * q.s));
  const a = along - t * q.c;
  const b = across - t * q.s;
  return Math.sqrt(a * a + b * b);
}

/** Least distance from the corners of p, and from the foot of q's apex on p's straight edges, to q, mm. */
function cornersAndEdges(p: Sector, q: Sector): number {
  let least = pointToSector(p.x, p.y, q);
  for (let side = -1; side <= 1; side += 2) {
    const s = p.s * side;
    const ex = p.ux * p.c - p.uy * s;
    const ey = p.ux * s + p.uy * p.c;
    least = Math.min(least, pointToSector(p.x + ex * p.r, p.y + ey * p.r, q));
    const t = (q.x - p.x) * ex + (q.y - p.y) * ey;
    if (t > 0 && t < p.r) least = Math.min(least, pointToSector(p.x + ex * t, p.y + ey * t, q));
  }
  return least;
}

/** Sine of the angle below which two edges count as parallel; corners then tell whether they touch. */
const PARALLEL = 1e-12;

const crosses = (ax: number, ay: number, bx: number, by: number, dx: number, dy: number): boolean => {
  // Segments a and b from a common offset d: solved for both parameters at once.
  const turn = ax * by - ay * bx;
  if (turn * turn <= PARALLEL * PARALLEL * (ax * ax + ay * ay) * (bx * bx + by * by)) return false;
  const t = (dx * by - dy * bx) / turn;
  const u = (dx * ay - dy * ax) / turn;
  return t >= 0 && t <= 1 && u >= 0 && u <= 1;
};

function edgesCross(p: Sector, q: Sector): boolean {
  for (let i = -1; i <= 1; i += 2) {
    const ps = p.s * i;
    const ax = (p.ux * p.c - p.uy * ps) * p.r;
    const ay = (p.ux * ps + p.uy * p.c) * p.r;
    for (let j = -1; j <= 1; j += 2) {
      const qs = q.s * j;
      const bx = (q.ux * q.c - q.uy * qs) * q.r;
      const by = (q.ux * qs + q.uy * q.c) * q.r;
      if (crosses(ax, ay, bx, by, q.x - p.x, q.y - p.y)) return true;
    }
  }
  return false;
}

const looksAt = (q: Sector, dx: number, dy: number): boolean => {
  const along = dx * q.ux + dy * q.uy;
  return along >= 0 && Math.abs(dx * q.uy - dy * q.ux) * q.c <= along * q.s;
};

/**
 * Least distance between two sectors, mm; 0 where they touch or cross. Exact: the nearest points of two convex shapes
 * lie on a corner, on an edge with the foot of the other's apex, or on both arcs along the line of apexes.
 */
export function sectorDistance(p: Sector, q: Sector): number {
  if (edgesCross(p, q)) return 0;
  const dx = q.x - p.x;
  const dy = q.y - p.y;
  if (looksAt(p, dx, dy) && looksAt(q, -dx, -dy)) {
    return Math.max(0, Math.sqrt(dx * dx + dy * dy) - p.r - q.r);
  }
  return Math.min(cornersAndEdges(p, q), cornersAndEdges(q, p));
}
