import { memo, useMemo, useRef, useState } from 'react';
import { limitNamed } from '../../plan/book.ts';
import type { Units } from '../../plan/plan.ts';
import type { InputCell } from '../../plan/template.ts';
import type { Swept } from '../../studies/sweep.ts';
import { isCrossing, turnsAt } from '../../studies/sweep-words.ts';
import { capital, type Words } from '../../studies/words.ts';
import { niceTicks } from '../parts/ticks.ts';
import { useBox } from '../parts/use-box.ts';
import { useSession } from '../use-session.ts';
import { Crossings } from './crossings.tsx';
import { type Edge, edgesOf } from './edges.ts';
import { Ground } from './ground.tsx';
import { apart } from './letters.ts';
import { laidOver, type OtherLine } from './other-lines.ts';
import { plotOf, ROOM } from './plot-box.ts';
import { PresentMark } from './present-mark.tsx';
import { ReadOut } from './read-out.tsx';
import { type Reading, readWords } from './read-words.ts';
import { type Axis, type LineRow, SweepLines } from './sweep-lines.tsx';
import { useTry } from './use-try.ts';

const MM_PER_INCH = 25.4;
const LETTERING = 13;
/** Narrowest plot that still says something, px. */
const NARROWEST = 60;
/** Ground left above and below all that is drawn, as a share of its height. */
const MARGIN = 0.08;

interface Props {
  readonly swept: Swept;
  /** Which of the results asked for is drawn. */
  readonly index: number;
  readonly cell: InputCell;
  /** Unit of the result. */
  readonly unit: string;
  readonly units: Units;
  readonly words: Words;
  /** The limits on that result. */
  readonly limits: ReadonlySet<string>;
  readonly height: number;
  /** The scenario the line belongs to, when others are laid over it. */
  readonly scenario: string | undefined;
  readonly others: readonly OtherLine[];
}

const boundWords = ({ limit, forbids, spots }: Edge, figure: (value: number) => string): string => {
  const low = limitNamed(limit)?.low_is_outside === true ? 'more than' : 'at least';
  return `${forbids === 'below' ? low : 'at most'} ${figure(spots.at(-1)?.y ?? 0)}`;
};

const unitWord = (unit: string, units: Units): string => {
  if (unit === '–') return '';
  if (unit === 'deg') return 'degrees';
  return unit === 'mm' && units === 'in' ? 'in' : unit;
};

/**
 * One swept result as a line: forbidden ground hatched, the present value marked, crossings lettered; values can be
 * tried on it.
 */
export const SweepChart = memo(function SweepChart(props: Props) {
  const { swept, index, cell, unit, units, words, limits, height, scenario, others } = props;
  const session = useSession();
  const frame = useRef<HTMLDivElement>(null);
  const width = useBox(frame)?.width ?? 0;
  const [cursor, setCursor] = useState<number>();

  const { points, ask, turnings } = swept;
  const { whole, present } = ask;
  const result = ask.results[index] ?? '';
  const x = words.cell(cell.name);
  const y = words.cell(result);
  const [low, high] = [points[0]?.x ?? 0, points.at(-1)?.x ?? 1];

  const drawn = useMemo(() => {
    const sizeOf = (of: string): number => (units === 'in' && of === 'mm' ? MM_PER_INCH : 1);
    const edges = edgesOf(swept, limits);
    const over = laidOver(points, index, scenario, others);
    const rows = points.map(
      (point, i): LineRow => ({
        x: point.x,
        y: point.values[index] ?? null,
        ...Object.fromEntries(over.lines.map((it, n) => [`other${n}`, it.values[i] ?? null])),
      }),
    );
    const values = [
      ...points.map((it) => it.values[index] ?? null),
      ...over.lines.flatMap((it) => it.values),
    ].filter((it) => it !== null);
    const heights = [...values, ...edges.flatMap((it) => it.spots.map((spot) => spot.y))];
    const [least, most] = [Math.min(...heights), Math.max(...heights)];
    const spread = most - least || Math.abs(most) || 1;
    const within = (ticks: readonly number[], from: number, to: number): readonly number[] =>
      ticks.filter((it) => it >= from && it <= to);
    const [bottom, top] = [least - spread * MARGIN, most + spread * MARGIN];
    const count = Math.max(2, Math.floor(height / 44));
    const yAxis: Axis = {
      low: bottom,
      high: top,
      of: sizeOf(unit),
      ticks: within(niceTicks(bottom, top, count, { of: sizeOf(unit) }), bottom, top),
    };
    // A step is as wide on both sides of its whole number.
    const beyond = whole ? 0.5 : 0;
    const xAxis: Axis = {
      low: low - beyond,
      high: high + beyond,
      of: sizeOf(cell.unit),
      ticks: within(niceTicks(low, high, 6, { whole, of: sizeOf(cell.unit) }), low, high),
    };
    return { edges, over, rows, xAxis, yAxis, isEmpty: values.length === 0 };
  }, [swept, points, index, limits, scenario, others, units, unit, cell.unit, whole, low, high, height]);
  const { edges, over, rows, xAxis, yAxis } = drawn;
  const plot = useMemo(
    () => plotOf(width, height, [xAxis.low, xAxis.high], [yAxis.low, yAxis.high]),
    [width, height, xAxis, yAxis],
  );
  const crossings = useMemo(() => {
    const here = turnings.filter((it) => limits.has(it.limit) && isCrossing(it));
    return [...new Map(here.map((it) => [turnsAt(it, x), { at: it.at, text: turnsAt(it, x) }])).values()];
  }, [turnings, limits, x]);
  const letters = [
    ...edges
      .filter((it) => it.spots.at(-1)?.x === high)
      .map((it) => ({ text: boundWords(it, y.figure), at: plot.y(it.spots.at(-1)?.y ?? 0), isBound: true })),
    ...[{ name: over.own, values: points.map((it) => it.values[index] ?? null) }, ...over.lines].flatMap(
      ({ name, values }) => {
        const end = values.at(-1) ?? null;
        return name === undefined || end === null ? [] : [{ text: name, at: plot.y(end), isBound: false }];
      },
    ),
  ].filter((it, i, list) => list.findIndex((other) => other.text === it.text) === i);

  const reading: Reading = { points, index, input: cell.name, result, limits };
  const at = cursor ?? present ?? low;
  const tries = useTry({ cell, units, low, high, plot, frame, onLook: setCursor });

  return (
    <>
      <div
        className="sweep-plot"
        ref={frame}
        style={{ height }}
        role="slider"
        tabIndex={0}
        aria-label={`${cell.label}, tried on the chart of ${y.short}`}
        aria-valuemin={low}
        aria-valuemax={high}
        aria-valuenow={at}
        aria-valuetext={readWords(reading, at, words)}
        {...tries.on}
      >
        {width > ROOM.left + ROOM.right + NARROWEST && (
          <>
            <Ground plot={plot} edges={edges} low={low} high={high} width={width} height={height} />
            {drawn.isEmpty ? (
              <div className="sweep-none sweep-axes type-small">
                <p>
                  {capital(y.short)} has no answer anywhere in this range. {session.answer(result)?.why}
                </p>
              </div>
            ) : (
              <SweepLines
                width={width}
                height={height}
                x={xAxis}
                y={yAxis}
                rows={rows}
                others={over.lines.length}
                whole={whole}
              />
            )}
            <svg
              className="sweep-layer"
              width={width}
              height={height}
              aria-hidden="true"
              focusable="false"
              display={drawn.isEmpty ? 'none' : undefined}
            >
              {cursor !== undefined && (
                <line
                  className="sweep-cursor"
                  x1={plot.x(cursor)}
                  x2={plot.x(cursor)}
                  y1={plot.top}
                  y2={plot.bottom}
                />
              )}
              <Crossings
                plot={plot}
                crossings={crossings}
                upright={present === null ? undefined : plot.x(present)}
              />
              <PresentMark
                plot={plot}
                input={cell.name}
                result={result}
                low={low}
                high={high}
                say={x.figure}
              />
              {apart(letters, LETTERING, plot.top, plot.bottom).map((it) => (
                <text
                  key={it.text}
                  className={it.isBound ? 'sweep-letter sweep-bound' : 'sweep-letter'}
                  x={plot.right + 8}
                  y={it.placed + 4}
                >
                  {it.text}
                </text>
              ))}
              <text className="sweep-letter sweep-unit" x={plot.right + 20} y={plot.bottom + 16}>
                {x.noun?.[1] ?? unitWord(cell.unit, units)}
              </text>
              <text className="sweep-letter sweep-unit" x={plot.left - 8} y={plot.top - 7} textAnchor="end">
                {unitWord(unit, units)}
              </text>
            </svg>
          </>
        )}
      </div>
      <ReadOut reading={reading} words={words} cursor={cursor} why={tries.why} tried={tries.tried} />
    </>
  );
});
