import { type KeyboardEvent, memo, useRef } from 'react';
import { Line, LineChart, ReferenceArea, ReferenceDot, ReferenceLine, XAxis, YAxis } from 'recharts';
import type { InputCell } from '../../plan/template.ts';
import { brief } from '../../session/limit-words.ts';
import type { Swept } from '../../studies/sweep.ts';
import type { LimitAnswer } from '../../workbook/judged.ts';
import { unitOf } from '../parts/show.ts';
import { stepped } from '../parts/step.ts';
import { useBox } from '../parts/use-box.ts';
import { usePlan, useSession } from '../use-session.ts';
import { niceTicks } from './ticks.ts';

/** Room at the right for the bounds' letters, px. */
const BESIDE = 96;

interface Props {
  readonly swept: Swept;
  readonly cell: InputCell;
  readonly limits: readonly LimitAnswer[];
  readonly stale: boolean;
  readonly height: number;
}

const TICK = { fontSize: 11.5, fontStretch: '85%', fill: 'var(--soft)' };

/** The swept result as a line, the forbidden side of each limit hatched, the present value marked. */
export const SweepChart = memo(function SweepChart({ swept, cell, limits, stale, height }: Props) {
  const session = useSession();
  const plan = usePlan();
  const frame = useRef<HTMLDivElement>(null);
  const box = useBox(frame);
  const { points, ask, turnings } = swept;
  const result = ask.results[0] ?? '';
  const unit = unitOf(result, plan);
  const drawn = points.flatMap(({ x, values }) => (values[0] == null ? [] : [{ x, y: values[0] }]));
  const bounds = limits.flatMap((it) => [it.low, it.high]).filter((it) => it !== undefined);
  const ys = [...drawn.map((it) => it.y), ...bounds];
  const spread = Math.max(...ys) - Math.min(...ys) || 1;
  const yTicks = niceTicks(Math.min(...ys) - spread * 0.08, Math.max(...ys) + spread * 0.08, 5);
  const yDomain: [number, number] = [yTicks[0] ?? 0, yTicks.at(-1) ?? 1];
  const xDomain: [number, number] = [points[0]?.x ?? 0, points.at(-1)?.x ?? 1];
  const xTicks = niceTicks(xDomain[0], xDomain[1], 6).filter((it) => it >= xDomain[0] && it <= xDomain[1]);
  const present = ask.present;
  const here = drawn.find((it) => it.x === present);
  const say = (value: number, of: string): string => brief(value, of, plan.units);
  const tickText = (value: number): string => String(Number(value.toPrecision(6))).replace('-', '−');
  const whole = cell.type === 'whole';

  const onKeyDown = (event: KeyboardEvent): void => {
    const value = session.value(cell.name);
    if ((event.key !== 'ArrowLeft' && event.key !== 'ArrowRight') || typeof value !== 'number') return;
    event.preventDefault();
    session.choose(cell.name, stepped(cell, value, event.key === 'ArrowRight' ? 1 : -1, plan.units));
  };
  const choose = (x: unknown): void => {
    if (typeof x === 'number' || typeof x === 'string') session.choose(cell.name, Number(x));
  };

  return (
    <div
      className="sweep-plot"
      ref={frame}
      data-stale={stale ? '' : undefined}
      style={{ height }}
      role="slider"
      tabIndex={0}
      aria-label={`${cell.label}, tried on the chart`}
      aria-valuemin={xDomain[0]}
      aria-valuemax={xDomain[1]}
      aria-valuenow={present ?? xDomain[0]}
      aria-valuetext={`${present === null ? 'no value' : say(present, cell.unit)}: ${here === undefined ? 'no answer' : say(here.y, unit)}`}
      onKeyDown={onKeyDown}
    >
      {box !== undefined && box.width > BESIDE && (
        <LineChart
          width={box.width}
          height={height}
          data={drawn}
          margin={{ top: 16, right: BESIDE, bottom: 4, left: 4 }}
          onClick={(state) => choose(state?.activeLabel)}
          accessibilityLayer={false}
        >
          <defs>
            <pattern
              id="sweep-hatch"
              width="7"
              height="7"
              patternUnits="userSpaceOnUse"
              patternTransform="rotate(45)"
            >
              <line x1="0" y1="0" x2="0" y2="7" stroke="var(--soft)" strokeWidth="1" />
            </pattern>
          </defs>
          {limits.map((it) => (
            <Forbidden key={it.name} low={it.low} high={it.high} domain={yDomain} x={xDomain} />
          ))}
          <XAxis
            dataKey="x"
            type="number"
            domain={xDomain}
            ticks={xTicks}
            tickFormatter={tickText}
            tick={TICK}
            tickSize={-5}
            tickMargin={10}
            height={24}
            stroke="var(--ink)"
            allowDataOverflow
          />
          <YAxis
            type="number"
            domain={yDomain}
            ticks={yTicks}
            tickFormatter={tickText}
            tick={TICK}
            tickSize={-5}
            tickMargin={8}
            width={44}
            stroke="var(--ink)"
            allowDataOverflow
          />
          {limits.flatMap((it) =>
            (
              [
                ['at least', it.low],
                ['at most', it.high],
              ] as const
            ).map(([word, bound]) =>
              bound === undefined ? null : (
                <ReferenceLine
                  key={it.name + word}
                  y={bound}
                  stroke="var(--ink)"
                  strokeWidth={2.5}
                  label={{
                    value: `${word} ${say(bound, unit)}`,
                    position: 'right',
                    fontSize: 11.5,
                    fill: 'var(--ink)',
                  }}
                />
              ),
            ),
          )}
          {present !== null && (
            <ReferenceLine
              x={present}
              stroke="var(--mark)"
              strokeWidth={2.5}
              label={{
                value: `now ${say(present, cell.unit)}`,
                position: 'top',
                fontSize: 11.5,
                fill: 'var(--mark)',
              }}
            />
          )}
          <Line
            dataKey="y"
            type={whole ? 'step' : 'linear'}
            stroke="var(--ink)"
            strokeWidth={2}
            dot={whole ? { r: 3, fill: 'var(--ink)', stroke: 'none' } : false}
            activeDot={false}
            isAnimationActive={false}
          />
          {here !== undefined && (
            <ReferenceDot
              x={here.x}
              y={here.y}
              r={5}
              fill="var(--film)"
              stroke="var(--mark)"
              strokeWidth={2.5}
            />
          )}
          {turnings
            .filter((it) => limits.some((limit) => limit.name === it.limit))
            .map((it) => (
              <ReferenceDot
                key={`${it.limit} ${it.at}`}
                x={it.at}
                y={yDomain[0]}
                r={0}
                label={{
                  value: `turns at ${say(it.at, cell.unit)}`,
                  position: 'insideBottomLeft',
                  fontSize: 11.5,
                  fill: 'var(--ink)',
                  offset: 10,
                }}
              />
            ))}
        </LineChart>
      )}
    </div>
  );
});

interface ForbiddenProps {
  readonly low: number | undefined;
  readonly high: number | undefined;
  readonly domain: readonly [number, number];
  readonly x: readonly [number, number];
}

/** The ground a limit forbids, hatched. */
const Forbidden = ({ low, high, domain, x }: ForbiddenProps) => (
  <>
    {low !== undefined && low > domain[0] && (
      <ReferenceArea
        x1={x[0]}
        x2={x[1]}
        y1={domain[0]}
        y2={low}
        fill="url(#sweep-hatch)"
        fillOpacity={1}
        stroke="none"
      />
    )}
    {high !== undefined && high < domain[1] && (
      <ReferenceArea
        x1={x[0]}
        x2={x[1]}
        y1={high}
        y2={domain[1]}
        fill="url(#sweep-hatch)"
        fillOpacity={1}
        stroke="none"
      />
    )}
  </>
);
