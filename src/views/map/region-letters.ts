import { ALLOWED, type Raster } from '../../studies/map/raster.ts';

/** A place that lettering takes up, px, by its middle. */
export interface Taken {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export interface RegionLetter extends Taken {
  /** What stands there, as in the raster. */
  readonly ground: number;
}

/** Side of the squares in which room is looked for, px. */
const SQUARE = 6;
/** Room kept round lettering, px. */
const CLEAR = 4;

export const meet = (a: Taken, b: Taken, clear = CLEAR): boolean =>
  Math.abs(a.x - b.x) < (a.width + b.width) / 2 + clear &&
  Math.abs(a.y - b.y) < (a.height + b.height) / 2 + clear;

/** Counts of one ground over all squares up to each, so that any box is counted at once. */
function sumsOf(cells: Uint8Array, columns: number, rows: number, ground: number): Int32Array {
  const sums = new Int32Array((columns + 1) * (rows + 1));
  for (let j = 0; j < rows; j++) {
    let row = 0;
    for (let i = 0; i < columns; i++) {
      row += cells[j * columns + i] === ground ? 1 : 0;
      sums[(j + 1) * (columns + 1) + i + 1] = (sums[j * (columns + 1) + i + 1] as number) + row;
    }
  }
  return sums;
}

/**
 * Where each region's name fits inside it: the place with most of the region round it. `sizeOf` gives the size of the
 * name, px; a region too small for its name gets none. `scale` elements of the raster make one px.
 */
export function regionLetters(
  raster: Raster,
  scale: number,
  sizeOf: (ground: number) => { readonly width: number; readonly height: number },
  taken: readonly Taken[],
): readonly RegionLetter[] {
  const side = SQUARE * scale;
  const [columns, rows] = [Math.floor(raster.width / side), Math.floor(raster.height / side)];
  const cells = new Uint8Array(columns * rows);
  for (let j = 0; j < rows; j++) {
    for (let i = 0; i < columns; i++) {
      const [x, y] = [Math.floor((i + 0.5) * side), Math.floor((j + 0.5) * side)];
      cells[j * columns + i] = raster.ground[y * raster.width + x] as number;
    }
  }
  const found: RegionLetter[] = [];
  for (const ground of new Set(cells)) {
    if (ground === ALLOWED) continue;
    const sums = sumsOf(cells, columns, rows, ground);
    const { width, height } = sizeOf(ground);
    const [halfWide, halfHigh] = [Math.ceil(width / SQUARE / 2), Math.ceil(height / SQUARE / 2)];
    const isAll = (i: number, j: number, more: number): boolean => {
      const [left, right] = [i - halfWide - more, i + halfWide + more + 1];
      const [top, bottom] = [j - halfHigh - more, j + halfHigh + more + 1];
      if (left < 0 || top < 0 || right > columns || bottom > rows) return false;
      const at = (a: number, b: number): number => sums[b * (columns + 1) + a] as number;
      const count = at(right, bottom) - at(left, bottom) - at(right, top) + at(left, top);
      return count === (right - left) * (bottom - top);
    };
    let [best, most] = [undefined as RegionLetter | undefined, -1];
    for (let j = 0; j < rows; j++) {
      for (let i = 0; i < columns; i++) {
        if (!isAll(i, j, Math.max(0, most + 1))) continue;
        const letter = { ground, x: (i + 0.5) * SQUARE, y: (j + 0.5) * SQUARE, width, height };
        if ([...taken, ...found].some((it) => meet(it, letter))) continue;
        let more = Math.max(0, most + 1);
        while (isAll(i, j, more + 1)) more++;
        [best, most] = [letter, more];
      }
    }
    if (best !== undefined) found.push(best);
  }
  return found;
}
