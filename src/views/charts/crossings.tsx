import { memo } from 'react';
import type { Plot } from './plot-box.ts';

export interface Crossing {
  readonly at: number;
  readonly text: string;
}

interface Props {
  readonly plot: Plot;
  readonly crossings: readonly Crossing[];
  /** The upright of the present value, px, which no lettering may cover. */
  readonly upright: number | undefined;
}

const TICK = 10;
const LINE = 13;
/** Between a lettering and the present value's upright, px. */
const CLEAR = 5;
/** Width of one letter of the smallest type, px, from measuring it. */
const LETTER = 5.6;

/** The values at which a limit turns: a short tick on the axis, lettered; letterings that would meet stand in rows. */
export const Crossings = memo(function Crossings({ plot, crossings, upright }: Props) {
  const beside = (middle: number, half: number, at: number): number => {
    if (upright === undefined || Math.abs(middle - upright) > half + CLEAR) return middle;
    return at >= upright ? upright + half + CLEAR : upright - half - CLEAR;
  };
  const rows: number[] = [];
  const sorted = crossings.map((it) => ({ ...it, at: plot.x(it.at) })).sort((a, b) => a.at - b.at);
  const placed = sorted.map((it) => {
    const half = (it.text.length * LETTER) / 2;
    const inside = Math.min(plot.right - half, Math.max(plot.left + half, it.at));
    const middle = beside(inside, half, it.at);
    const free = rows.findIndex((end) => end <= middle - half);
    const row = free < 0 ? rows.length : free;
    rows[row] = middle + half + 6;
    return { ...it, middle, row };
  });
  return (
    <g>
      {placed.map(({ at, text, middle, row }) => (
        <g key={`${text} ${at}`}>
          <line className="sweep-tick" x1={at} x2={at} y1={plot.bottom - TICK} y2={plot.bottom} />
          <text
            className="sweep-letter"
            x={middle}
            y={plot.bottom - TICK - 4 - row * LINE}
            textAnchor="middle"
          >
            {text}
          </text>
        </g>
      ))}
    </g>
  );
});
