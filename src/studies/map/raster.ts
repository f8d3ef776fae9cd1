import type { Mapped } from './map.ts';
import { type Nodes, nodesOf } from './nodes.ts';

/** What stands at a picture's element: allowed, a limit of the map by its number plus 1, or what cannot be. */
export const ALLOWED = 0;
export const REFUSED = 255;

/** A map as picture elements, the top row first. */
export interface Raster {
  readonly width: number;
  readonly height: number;
  readonly ground: Uint8Array;
}

/** Most limits a picture tells apart. */
const MOST = 200;

interface Strip {
  /** The node before each element's middle. */
  readonly from: Uint16Array;
  readonly share: Float32Array;
}

/** Where the middles of a row of elements lie between nodes. */
function stripOf({ at }: Nodes, count: number): Strip {
  const [low, high] = [at[0] as number, at.at(-1) as number];
  const strip: Strip = { from: new Uint16Array(count), share: new Float32Array(count) };
  let node = 0;
  for (let p = 0; p < count; p++) {
    const place = low + ((high - low) * (p + 0.5)) / count;
    while (node + 2 < at.length && (at[node + 1] as number) <= place) node++;
    const [a, b] = [at[node] as number, at[node + 1] as number];
    strip.from[p] = node;
    strip.share[p] = b > a ? Math.min(1, Math.max(0, (place - a) / (b - a))) : 0;
  }
  return strip;
}

/** Ends of the runs of elements that lie between the same two nodes. */
function runsOf(from: Uint16Array): [start: number, end: number][] {
  const runs: [number, number][] = [];
  for (let p = 0; p < from.length; p++) {
    const run = runs.at(-1);
    if (run !== undefined && from[run[0]] === from[p]) run[1] = p + 1;
    else runs.push([p, p + 1]);
  }
  return runs;
}

/** What decides the elements between four points of a map. */
interface Cell {
  /** Fields that may be the furthest outside somewhere in it, in order. */
  readonly active: readonly number[];
  /** The one that is so everywhere. */
  readonly only: number | undefined;
  /** Nothing in it can be. */
  readonly isRefused: boolean;
  /** Four for each field, one at each corner. */
  readonly depths: Float64Array;
}

/** Reads the fields off at the corners, and leaves out those that are nowhere the furthest outside. */
function cellOf(fields: readonly Float32Array[], corners: Int32Array): Cell {
  const depths = new Float64Array(4 * fields.length);
  const outside: { readonly k: number; readonly least: number }[] = [];
  let isRefused = false;
  // Somewhere in the cell a limit is at least so far outside, whatever the place.
  let surely = 0;
  for (let k = 0; k < fields.length; k++) {
    let least = Number.POSITIVE_INFINITY;
    let most = Number.NEGATIVE_INFINITY;
    for (let n = 0; n < 4; n++) {
      const depth = (fields[k] as Float32Array)[corners[n] as number] as number;
      depths[4 * k + n] = depth;
      least = Math.min(least, depth);
      most = Math.max(most, depth);
    }
    if (least < 0) outside.push({ k, least });
    if (k === 0) isRefused = most < 0;
    else surely = Math.min(surely, most);
  }
  const active = outside.filter(({ k, least }) => k === 0 || least <= surely).map(({ k }) => k);
  const only = active.length === 1 && active[0] !== 0 && surely < 0 ? active[0] : undefined;
  return { active, only, isRefused, depths };
}

/**
 * A map as picture elements: each shows the limit that is furthest outside there, read off between the map's points. Only
 * the cells through which an edge runs are looked at element by element. It yields after every row of cells.
 */
export function* rasterInRows(mapped: Mapped, width: number, height: number): Generator<void, Raster, void> {
  const { xs, ys, ask, refused } = mapped;
  const limits = mapped.limits.slice(0, MOST);
  const [x, y] = [nodesOf(xs, ask.x.whole), nodesOf(ys, ask.y.whole)];
  const [across, up] = [stripOf(x, width), stripOf(y, height)];
  const ground = new Uint8Array(width * height);
  const corners = new Int32Array(4);
  const bad = Float32Array.from(refused, (it) => (it === 1 ? -1 : 1));
  const fields = [bad, ...limits.map((it) => it.depth)];

  for (const [bottom, top] of runsOf(up.from)) {
    const j = up.from[bottom] as number;
    for (const [left, right] of runsOf(across.from)) {
      const i = across.from[left] as number;
      for (let n = 0; n < 4; n++) {
        const column = x.of[i + (n & 1)] as number;
        corners[n] = (y.of[j + (n >> 1)] as number) * xs.length + column;
      }
      const here = cellOf(fields, corners);
      if (here.isRefused || here.only !== undefined) {
        const all = here.isRefused ? REFUSED : (here.only as number);
        for (let p = bottom; p < top; p++) {
          const row = (height - 1 - p) * width;
          ground.fill(all, row + left, row + right);
        }
        continue;
      }
      const { active, depths } = here;
      for (let p = bottom; active.length > 0 && p < top; p++) {
        const v = up.share[p] as number;
        const row = (height - 1 - p) * width;
        for (let q = left; q < right; q++) {
          const u = across.share[q] as number;
          let worst = 0;
          let at = ALLOWED;
          for (let n = 0; n < active.length; n++) {
            const k = active[n] as number;
            const low = (depths[4 * k] as number) * (1 - u) + (depths[4 * k + 1] as number) * u;
            const high = (depths[4 * k + 2] as number) * (1 - u) + (depths[4 * k + 3] as number) * u;
            const depth = low * (1 - v) + high * v;
            if (depth >= worst) continue;
            worst = depth;
            at = k;
            if (k === 0) {
              at = REFUSED;
              break;
            }
          }
          ground[row + q] = at;
        }
      }
    }
    yield;
  }
  return { width, height, ground };
}
