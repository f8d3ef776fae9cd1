import { memo } from 'react';
import { Line, LineChart, XAxis, YAxis } from 'recharts';
import { tickText } from '../parts/ticks.ts';
import { ROOM } from './plot-box.ts';

const TICK = { className: 'sweep-axis-tick' };
const MARGIN = { top: ROOM.top, right: ROOM.right, bottom: 0, left: 0 };
const POINT = { r: 3 };

/** One axis of a chart. */
export interface Axis {
  readonly low: number;
  readonly high: number;
  readonly ticks: readonly number[];
  /** Size of the unit shown, in base units. */
  readonly of: number;
}

/** A row for every value looked at: the line's own `y`, and `other0`, `other1`, … of lines laid over it. */
export type LineRow = Readonly<Record<string, number | null>>;

interface Props {
  readonly width: number;
  readonly height: number;
  readonly x: Axis;
  readonly y: Axis;
  readonly rows: readonly LineRow[];
  /** How many lines are laid over it. */
  readonly others: number;
  /** Whole numbers are steps with points. */
  readonly whole: boolean;
}

/** The lines and axes of a chart. Costly to draw, so that nothing that merely moves about stands in it. */
export const SweepLines = memo(function SweepLines({ width, height, x, y, rows, others, whole }: Props) {
  const type = whole ? 'step' : 'linear';
  return (
    <LineChart
      className="sweep-lines"
      width={width}
      height={height}
      data={rows}
      margin={MARGIN}
      accessibilityLayer={false}
    >
      <XAxis
        dataKey="x"
        type="number"
        domain={[x.low, x.high]}
        ticks={x.ticks}
        tickFormatter={(value: number) => tickText(value, x.of)}
        tick={TICK}
        tickSize={-5}
        tickMargin={10}
        height={ROOM.bottom}
        interval={0}
        allowDataOverflow
      />
      <YAxis
        type="number"
        domain={[y.low, y.high]}
        ticks={y.ticks}
        tickFormatter={(value: number) => tickText(value, y.of)}
        tick={TICK}
        tickSize={-5}
        tickMargin={9}
        width={ROOM.left}
        interval={0}
        allowDataOverflow
      />
      {Array.from({ length: others }, (_, n) => `other${n}`).map((key, n) => (
        <Line
          key={key}
          className={`sweep-line-${n + 1}`}
          dataKey={key}
          type={type}
          dot={false}
          activeDot={false}
          isAnimationActive={false}
        />
      ))}
      <Line dataKey="y" type={type} dot={whole ? POINT : false} activeDot={false} isAnimationActive={false} />
    </LineChart>
  );
});
