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

/**
 * A map as picture elements: each shows the limit that is furthest past there, read off between the map's points. Only
 * the cells through which an edge runs are looked at element by element.
 */
export function rasterOf(mapped: Mapped, width: number, height: number): Raster {
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
      const depth = (k: number, n: number): number =>
        (fields[k] as Float32Array)[corners[n] as number] as number;
      const active: number[] = [];
      let isWhole = false;
      for (let k = 0; k < fields.length; k++) {
        const failing = [0, 1, 2, 3].filter((n) => depth(k, n) < 0).length;
        if (failing > 0) active.push(k);
        if (failing === 4) isWhole = true;
      }
      if (active.length === 0) continue;
      const only = active.length === 1 && isWhole ? (active[0] as number) : undefined;
      for (let p = bottom; p < top; p++) {
        const v = up.share[p] as number;
        const row = (height - 1 - p) * width;
        for (let q = left; q < right; q++) {
          const u = across.share[q] as number;
          let [worst, at] = [0, -1];
          if (only !== undefined) at = only;
          else {
            for (const k of active) {
              const low = depth(k, 0) + (depth(k, 1) - depth(k, 0)) * u;
              const high = depth(k, 2) + (depth(k, 3) - depth(k, 2)) * u;
              const here = low + (high - low) * v;
              if (here >= 0) continue;
              if (k === 0) {
                at = 0;
                break;
              }
              if (here < worst) [worst, at] = [here, k];
            }
          }
          ground[row + q] = at < 0 ? ALLOWED : at === 0 ? REFUSED : at;
        }
      }
    }
  }
  return { width, height, ground };
}
