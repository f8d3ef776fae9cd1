/** One page's piece of something larger than a page, mm of the thing itself, x to the right and y up. */
export interface Tile {
  /** Counted from 1, left to right and top to bottom. */
  readonly across: number;
  readonly down: number;
  readonly ofAcross: number;
  readonly ofDown: number;
  /** What this page shows, overlaps with its neighbours included. */
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
}

export interface Size {
  readonly width: number;
  readonly height: number;
}

/** How far pages show what is past a seam, mm. */
export const OVERLAP = 5;

const pieces = (length: number, window: number): number =>
  length <= window ? 1 : Math.ceil(length / (window - 2 * OVERLAP));

/** From where to where piece `i` of `of` shows a length that begins at `from`. */
function reach(i: number, of: number, from: number, length: number, window: number): [number, number] {
  if (of === 1) return [from + (length - window) / 2, from + (length + window) / 2];
  const net = window - 2 * OVERLAP;
  // What is left over is shared between the two ends.
  const start = from - (of * net - length) / 2 + i * net;
  return [start - OVERLAP, start + net + OVERLAP];
}

/** The pages that show an extent at true size in windows of one size, row by row from the top. */
export function tilesOf(
  { x0, y0, width, height }: Size & { readonly x0: number; readonly y0: number },
  window: Size,
): readonly Tile[] {
  const [ofAcross, ofDown] = [pieces(width, window.width), pieces(height, window.height)];
  return Array.from({ length: ofDown }, (_, down) =>
    Array.from({ length: ofAcross }, (_, across): Tile => {
      const [left, right] = reach(across, ofAcross, x0, width, window.width);
      const [low, high] = reach(ofDown - 1 - down, ofDown, y0, height, window.height);
      return { across: across + 1, down: down + 1, ofAcross, ofDown, x0: left, x1: right, y0: low, y1: high };
    }),
  ).flat();
}
