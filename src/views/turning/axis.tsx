import { niceTicks } from '../parts/ticks.ts';
import { EDGE } from './strip.tsx';

interface Props {
  readonly low: number;
  readonly high: number;
  readonly whole: boolean;
  readonly present: number | null;
  readonly width: number;
  readonly figure: (value: number) => string;
  readonly bare: (value: number) => string;
}

const HEIGHT = 42;
/** Room that one tick's figure takes, px. */
const APART = 90;

/** The range's own rule above the strips, with the present value's flag. */
export function Axis({ low, high, whole, present, width, figure, bare }: Props) {
  const x = (value: number): number => EDGE + ((value - low) / (high - low)) * (width - 2 * EDGE);
  const ticks = niceTicks(low, high, Math.max(2, Math.floor(width / APART)), { whole }).filter(
    (it) => it >= low && it <= high,
  );
  const anchor = (value: number): 'start' | 'middle' | 'end' =>
    x(value) < 30 ? 'start' : x(value) > width - 30 ? 'end' : 'middle';
  return (
    <svg className="turn-axis" width={width} height={HEIGHT} aria-hidden="true" focusable="false">
      <line className="turn-line" x1={EDGE} x2={width - EDGE} y1={HEIGHT - 1} y2={HEIGHT - 1} />
      {ticks.map((it) => (
        <g key={it}>
          <line className="turn-line" x1={x(it)} x2={x(it)} y1={HEIGHT - 6} y2={HEIGHT - 1} />
          <text x={x(it)} y={HEIGHT - 10} textAnchor={anchor(it)} className="turn-figure">
            {bare(it)}
          </text>
        </g>
      ))}
      {present !== null && (
        <g>
          <line className="turn-present" x1={x(present)} x2={x(present)} y1={HEIGHT - 8} y2={HEIGHT} />
          <text x={x(present)} y="12" textAnchor={anchor(present)} className="turn-flag">
            now {figure(present)}
          </text>
        </g>
      )}
    </svg>
  );
}
