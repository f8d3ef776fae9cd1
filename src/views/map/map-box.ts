import type { Mapped } from '../../studies/map/map.ts';
import { nodesOf } from '../../studies/map/nodes.ts';

/** Where a map stands in its frame, px. */
export interface MapBox {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly x: (value: number) => number;
  readonly y: (value: number) => number;
  readonly valueX: (px: number) => number;
  readonly valueY: (px: number) => number;
}

const within = (value: number, low: number, high: number): number => Math.min(high, Math.max(low, value));

/** Room round the picture at the usual size of text, px: unit above, figures below and to the left. */
const ROOM = { left: 44, right: 2, top: 26, bottom: 28 } as const;

/** `scale` is how much larger than usual the text is. */
export function boxOf(mapped: Mapped, width: number, height: number, scale: number): MapBox {
  const { xs, ys, ask } = mapped;
  const ends = (values: Float64Array, whole: boolean): readonly [number, number] => {
    const { at } = nodesOf(values, whole);
    return [at[0] as number, at.at(-1) as number];
  };
  const [lowX, highX] = ends(xs, ask.x.whole);
  const [lowY, highY] = ends(ys, ask.y.whole);
  const [left, right] = [Math.round(ROOM.left * scale), width - ROOM.right];
  const [top, bottom] = [Math.round(ROOM.top * scale), height - Math.round(ROOM.bottom * scale)];
  return {
    left,
    right,
    top,
    bottom,
    x: (value) => left + ((value - lowX) / (highX - lowX)) * (right - left),
    y: (value) => bottom - ((value - lowY) / (highY - lowY)) * (bottom - top),
    valueX: (px) => lowX + within((px - left) / (right - left), 0, 1) * (highX - lowX),
    valueY: (px) => lowY + within((bottom - px) / (bottom - top), 0, 1) * (highY - lowY),
  };
}
