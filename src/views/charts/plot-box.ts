/** Room round the plot, px: the flag above, the bounds' letters to the right, the ticks below and to the left. */
export const ROOM = { top: 20, right: 108, bottom: 26, left: 44 } as const;

export interface Plot {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly x: (value: number) => number;
  readonly y: (value: number) => number;
  /** The value that stands at a distance from the chart's left edge, px, inside the range. */
  readonly valueAt: (px: number) => number;
}

type Ends = readonly [low: number, high: number];

/** Where things stand in a chart of that size, px from its upper left corner. */
export function plotOf(width: number, height: number, xs: Ends, ys: Ends): Plot {
  const [left, right] = [ROOM.left, Math.max(ROOM.left + 1, width - ROOM.right)];
  const [top, bottom] = [ROOM.top, Math.max(ROOM.top + 1, height - ROOM.bottom)];
  const along = (value: number, [low, high]: Ends): number =>
    high > low ? (value - low) / (high - low) : 0.5;
  return {
    left,
    right,
    top,
    bottom,
    x: (value) => left + along(value, xs) * (right - left),
    y: (value) => bottom - along(value, ys) * (bottom - top),
    valueAt: (px) => {
      const share = Math.min(1, Math.max(0, (px - left) / (right - left)));
      return xs[0] + share * (xs[1] - xs[0]);
    },
  };
}
