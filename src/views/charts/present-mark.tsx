import { useCallback } from 'react';
import type { Session } from '../../session/session.ts';
import { useLook } from '../use-session.ts';
import type { Plot } from './plot-box.ts';

const RING = 5;
/** Room a flag needs to each side of its upright, px. */
const FLAG = 32;

interface Props {
  readonly plot: Plot;
  readonly input: string;
  readonly result: string;
  readonly low: number;
  readonly high: number;
  readonly say: (value: number) => string;
}

const numberOf = (value: unknown): number | null =>
  typeof value === 'number' ? value : typeof value === 'boolean' ? Number(value) : null;

/** Where the input and the result stand now. It follows an edit at once, before the line is drawn anew. */
export function PresentMark({ plot, input, result, low, high, say }: Props) {
  const x = useLook(useCallback((session: Session) => numberOf(session.value(input)), [input]));
  const y = useLook(useCallback((session: Session) => numberOf(session.value(result)), [result]));
  if (x === null || x < low || x > high) return null;
  const at = plot.x(x);
  const height = y === null ? Number.NaN : plot.y(y);
  return (
    <g>
      <line className="sweep-present" x1={at} x2={at} y1={plot.top - 2} y2={plot.bottom} />
      {height >= plot.top && height <= plot.bottom && (
        <circle className="sweep-ring" cx={at} cy={height} r={RING} />
      )}
      <text
        className="sweep-flag"
        x={Math.min(plot.right - FLAG / 2, Math.max(plot.left + FLAG, at))}
        y={plot.top - 7}
        textAnchor="middle"
      >
        now {say(x)}
      </text>
    </g>
  );
}
