import type { Mapped } from '../../studies/map/map.ts';
import { type Nodes, nodesOf } from '../../studies/map/nodes.ts';
import type { MapBox } from './map-box.ts';

/** One pair of whole numbers on a map: a box of its own, px, with the result there. */
export interface Cell {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
  /** NaN where there is no answer. */
  readonly value: number;
}

/** Whether both sides go by whole numbers, so that nothing lies between the values. */
export const isCells = ({ ask }: Mapped): boolean => ask.x.whole && ask.y.whole;

/** Where a value's stretch begins and ends. */
const stretch = ({ at }: Nodes, i: number): readonly [number, number] => [
  at[2 * i] as number,
  at[2 * i + 1] as number,
];

/** The cells of a map both of whose sides go by whole numbers; none for any other map. */
export function cellsOf(mapped: Mapped, box: MapBox): readonly Cell[] {
  if (!isCells(mapped)) return [];
  const { xs, ys, results } = mapped;
  const [x, y] = [nodesOf(xs, true), nodesOf(ys, true)];
  return Array.from(ys).flatMap((_, j) =>
    Array.from(xs, (_, i): Cell => {
      const [left, right] = stretch(x, i).map(box.x) as [number, number];
      const [bottom, top] = stretch(y, j).map(box.y) as [number, number];
      const value = results[0]?.[j * xs.length + i] ?? Number.NaN;
      return { left, top, width: right - left, height: bottom - top, value };
    }),
  );
}
