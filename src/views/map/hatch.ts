import { ALLOWED, type Raster, REFUSED } from '../../studies/map/raster.ts';

/** Degrees, so that the first few differ most. */
const ANGLES = [45, 135, 0, 90, 22.5, 112.5, 67.5, 157.5];
/** Between lines, px; wider once every angle is used. */
const PITCHES = [7, 11, 5, 14];

interface Lines {
  readonly across: number;
  readonly up: number;
  readonly pitch: number;
}

const linesOf = (degrees: number, pitch: number): Lines => ({
  across: Math.cos((degrees * Math.PI) / 180),
  up: Math.sin((degrees * Math.PI) / 180),
  pitch,
});

/** The hatch of the nth ground in the picture; what cannot be is dense and crossed. */
function hatchesOf(ground: number, n: number): readonly Lines[] {
  if (ground === REFUSED) return [linesOf(45, 5), linesOf(135, 5)];
  const pitch = PITCHES[Math.floor(n / ANGLES.length) % PITCHES.length] as number;
  return [linesOf(ANGLES[n % ANGLES.length] as number, pitch)];
}

/** Line width of a hatch, px. */
const WIDTH = 1;

/** Red, green and blue, 0 to 255. */
export type Ink = readonly [number, number, number];

/** Rows between two pauses. */
const ROWS = 32;

/**
 * The hatching of a raster as picture elements with their own transparency; `scale` elements make one px. It yields
 * after every few rows.
 */
export function* hatched(
  { width, height, ground }: Raster,
  [red, green, blue]: Ink,
  scale: number,
  more: number,
): Generator<void, Uint8ClampedArray<ArrayBuffer>, void> {
  const pixels = new Uint8ClampedArray(width * height * 4);
  const grounds = [...new Set(ground)].filter((it) => it !== ALLOWED).sort((a, b) => a - b);
  const hatches: (readonly Lines[])[] = [];
  for (const [n, it] of grounds.entries()) hatches[it] = hatchesOf(it, n);
  const half = ((WIDTH + more) * scale) / 2;
  for (let y = 0; y < height; y++) {
    if (y % ROWS === ROWS - 1) yield;
    for (let x = 0; x < width; x++) {
      const there = ground[y * width + x] as number;
      if (there === ALLOWED) continue;
      let cover = 0;
      for (const { across, up, pitch } of hatches[there] as readonly Lines[]) {
        const period = pitch * scale;
        const way = (x + 0.5) * across + (y + 0.5) * up;
        const along = way - Math.floor(way / period) * period;
        cover = Math.max(cover, half + 0.5 - Math.abs(along - period / 2));
      }
      if (cover <= 0) continue;
      const at = (y * width + x) * 4;
      pixels[at] = red;
      pixels[at + 1] = green;
      pixels[at + 2] = blue;
      pixels[at + 3] = Math.min(1, cover) * 255;
    }
  }
  return pixels;
}
