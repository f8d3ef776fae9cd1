import { type KeyboardEvent, type MouseEvent, memo, useId, useMemo, useRef, useState } from 'react';
import { Line, LineChart, XAxis, YAxis } from 'recharts';
import { limitNamed } from '../../plan/book.ts';
import type { InputCell } from '../../plan/template.ts';
import { studyWords } from '../../session/study-words.ts';
import type { SweepPoint, Swept } from '../../studies/sweep.ts';
import { isCrossing, turnsAt } from '../../studies/sweep-words.ts';
import { capital, told } from '../../studies/words.ts';
import { Action } from '../parts/action.tsx';
import { glide } from '../parts/glide.ts';
import { unitOf } from '../parts/show.ts';
import { settled, stepped } from '../parts/step.ts';
import { useBox } from '../parts/use-box.ts';
import { usePlan, useSession } from '../use-session.ts';
import { Crossings } from './crossings.tsx';
import { type Edge, edgesOf } from './edges.ts';
import { Ground } from './ground.tsx';
import { apart } from './letters.ts';
import { plotOf, ROOM } from './plot-box.ts';
import { PresentMark } from './present-mark.tsx';
import { readAt } from './read-out.ts';
import { niceTicks, tickText } from './ticks.ts';

const MM_PER_INCH = 25.4;
const TICK = { className: 'sweep-axis-tick' };
const LETTERING = 14;
/** Ground left above and below all that is drawn, as a share of its height. */
const ABOVE = 0.08;
/** Narrowest plot that still says something, px. */
const NARROWEST = 60;

/** The same result in another scenario. */
export interface OtherLine {
  readonly name: string;
  readonly points: readonly SweepPoint[];
}

interface Props {
  readonly swept: Swept;
  /** Which of the results asked for is drawn. */
  readonly index: number;
  readonly cell: InputCell;
  /** The limits on that result. */
  readonly limits: ReadonlySet<string>;
  readonly height: number;
  /** The scenario the line belongs to, when others are laid over it. */
  readonly scenario: string | undefined;
  readonly others: readonly OtherLine[];
  readonly stale: boolean;
}

const boundWords = ({ limit, forbids, spots }: Edge, figure: (value: number) => string): string => {
  const low = limitNamed(limit)?.low_is_past === true ? 'more than' : 'at least';
  return `${forbids === 'below' ? low : 'at most'} ${figure(spots.at(-1)?.y ?? 0)}`;
};

/** One swept result as a line: forbidden ground hatched, the present value marked, crossings lettered; values can be tried on it. */
export const SweepChart = memo(function SweepChart(props: Props) {
  const { swept, index, cell, limits, height, scenario, others, stale } = props;
  const session = useSession();
  const plan = usePlan();
  const frame = useRef<HTMLDivElement>(null);
  const box = useBox(frame);
  const id = useId();
  const gesture = useRef(0);
  const [cursor, setCursor] = useState<number>();
  const [why, setWhy] = useState<string>();
  const [tried, setTried] = useState<unknown>();

  const { points, ask, turnings } = swept;
  const result = ask.results[index] ?? '';
  const unit = unitOf(result, plan);
  const words = useMemo(() => studyWords(plan), [plan]);
  const x = words.cell(cell.name);
  const y = words.cell(result);
  const inchesOf = (of: string): number => (plan.units === 'in' && of === 'mm' ? MM_PER_INCH : 1);

  const edges = useMemo(() => edgesOf(swept, limits), [swept, limits]);
  const data = useMemo(
    () =>
      points.map(({ x: at, values }) => ({
        x: at,
        y: values[index] ?? null,
        ...Object.fromEntries(others.map((it, n) => [`other${n}`, readAt(it.points, index, at).value])),
      })),
    [points, index, others],
  );
  const all = [points, ...others.map((it) => it.points)].flatMap((line) =>
    line.flatMap((it) => it.values[index] ?? []),
  );
  const ys = [...all, ...edges.flatMap((it) => it.spots.map((spot) => spot.y))];
  const [least, most] = [Math.min(...ys), Math.max(...ys)];
  const spread = most - least || Math.abs(most) || 1;
  const [yLow, yHigh] = [least - spread * ABOVE, most + spread * ABOVE];
  const yTicks = niceTicks(yLow, yHigh, Math.max(2, Math.floor(height / 44)), { of: inchesOf(unit) }).filter(
    (it) => it >= yLow && it <= yHigh,
  );
  const [low, high] = [points[0]?.x ?? 0, points.at(-1)?.x ?? 1];
  // A step is as wide on both sides of its whole number.
  const beyond = ask.whole ? 0.5 : 0;
  const [xLow, xHigh] = [low - beyond, high + beyond];
  const xTicks = niceTicks(low, high, 6, { whole: ask.whole, of: inchesOf(cell.unit) }).filter(
    (it) => it >= low && it <= high,
  );
  const width = box?.width ?? 0;
  const plot = useMemo(
    () => plotOf(width, height, [xLow, xHigh], [yLow, yHigh]),
    [width, height, xLow, xHigh, yLow, yHigh],
  );
  const crossings = useMemo(() => {
    const here = turnings.filter((it) => limits.has(it.limit) && isCrossing(it));
    const byText = new Map(here.map((it) => [turnsAt(it, x), { at: it.at, text: turnsAt(it, x) }]));
    return [...byText.values()];
  }, [turnings, limits, x]);

  const named = [
    ...edges
      .filter((it) => it.spots.at(-1)?.x === high)
      .map((it) => ({ text: boundWords(it, y.figure), at: plot.y(it.spots.at(-1)?.y ?? 0), soft: false })),
    ...[{ name: scenario, points }, ...others].flatMap(({ name, points: line }) => {
      const end = line.at(-1)?.values[index] ?? null;
      return name === undefined || end === null ? [] : [{ text: name, at: plot.y(end), soft: true }];
    }),
  ].filter((it, i, list) => list.findIndex((other) => other.text === it.text) === i);

  const isChoice = cell.kind === 'choice';
  const now = session.value(cell.name);
  const present = typeof now === 'number' ? now : ask.present;
  const at = cursor ?? present;

  const snap = (value: number): number => {
    if (cell.only === undefined) return settled(cell, value, plan.units);
    return cell.only.reduce((best, it) => (Math.abs(it - value) < Math.abs(best - value) ? it : best));
  };
  const valueUnder = (event: MouseEvent): number => {
    const left = frame.current?.getBoundingClientRect().left ?? 0;
    return Math.min(high, Math.max(low, snap(plot.valueAt(event.clientX - left))));
  };
  const attempt = (value: number): void => {
    if (!isChoice) {
      setCursor(value);
      return;
    }
    glide();
    const done = session.choose(cell.name, value, `sweep ${id} ${gesture.current}`);
    setCursor(undefined);
    setWhy(done.ok ? undefined : done.why);
    setTried(done.ok ? session.plan : undefined);
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    if (at === null) return;
    const go = (times: number): number => {
      let value = at;
      for (let i = 0; i < Math.abs(times); i++) value = stepped(cell, value, times > 0 ? 1 : -1, plan.units);
      return Math.min(high, Math.max(low, value));
    };
    const keys: Readonly<Record<string, () => number>> = {
      ArrowRight: () => go(1),
      ArrowUp: () => go(1),
      ArrowLeft: () => go(-1),
      ArrowDown: () => go(-1),
      PageUp: () => go(10),
      PageDown: () => go(-10),
      Home: () => low,
      End: () => high,
    };
    const to = keys[event.key]?.();
    if (to === undefined) return;
    event.preventDefault();
    attempt(to);
  };

  const says = (value: number): string => {
    const read = readAt(points, index, value);
    const head = capital(told(x, value));
    if (read.refused !== undefined) return `${head}: ${read.refused}`;
    if (read.value === null) return `${head}: no answer.`;
    const states = read.about
      ? []
      : (points.find((it) => it.x === value)?.limits ?? []).filter((it) => limits.has(it.name));
    const state = states.find((it) => it.state === 'past') ?? states.find((it) => it.state === 'near');
    return `${head}: ${y.short} ${read.about ? 'about ' : ''}${y.figure(read.value)}${state === undefined ? '' : `, ${state.state}`}.`;
  };
  const hint = isChoice ? '' : ' It is read, not chosen: enter it on its own page.';
  const sentence = at === null ? 'No value is entered.' : `${says(at)}${cursor === undefined ? '' : hint}`;

  return (
    <>
      {/* A slider over a picture: what it stands at is read out under it. */}
      <div
        className="sweep-plot"
        ref={frame}
        style={{ height }}
        role="slider"
        tabIndex={0}
        aria-label={`${cell.label}, tried on the chart of ${y.short}`}
        aria-valuemin={low}
        aria-valuemax={high}
        aria-valuenow={at ?? low}
        aria-valuetext={sentence}
        onKeyDown={onKeyDown}
        onFocus={() => {
          gesture.current += 1;
        }}
        onPointerMove={(event) => {
          if (event.pointerType !== 'touch') setCursor(valueUnder(event));
        }}
        onPointerLeave={() => setCursor(undefined)}
        onClick={(event) => {
          gesture.current += 1;
          attempt(valueUnder(event));
        }}
      >
        {width > ROOM.left + ROOM.right + NARROWEST && (
          <>
            <Ground plot={plot} edges={edges} low={low} high={high} width={width} height={height} />
            {all.length === 0 ? (
              <p className="sweep-none type-small">
                {capital(y.short)} has no answer anywhere in this range. {session.answer(result)?.why}
              </p>
            ) : (
              <LineChart
                className="sweep-lines"
                width={width}
                height={height}
                data={data}
                margin={{ top: ROOM.top, right: ROOM.right, bottom: 0, left: 0 }}
                accessibilityLayer={false}
              >
                <XAxis
                  dataKey="x"
                  type="number"
                  domain={[xLow, xHigh]}
                  ticks={xTicks}
                  tickFormatter={(value: number) => tickText(value, inchesOf(cell.unit))}
                  tick={TICK}
                  tickSize={-5}
                  tickMargin={10}
                  height={ROOM.bottom}
                  interval={0}
                  allowDataOverflow
                />
                <YAxis
                  type="number"
                  domain={[yLow, yHigh]}
                  ticks={yTicks}
                  tickFormatter={(value: number) => tickText(value, inchesOf(unit))}
                  tick={TICK}
                  tickSize={-5}
                  tickMargin={9}
                  width={ROOM.left}
                  interval={0}
                  allowDataOverflow
                />
                {others.map((it, n) => (
                  <Line
                    key={it.name}
                    className={`sweep-line sweep-line-${n + 1}`}
                    dataKey={`other${n}`}
                    type={ask.whole ? 'step' : 'linear'}
                    dot={false}
                    activeDot={false}
                    isAnimationActive={false}
                  />
                ))}
                <Line
                  className="sweep-line"
                  dataKey="y"
                  type={ask.whole ? 'step' : 'linear'}
                  dot={ask.whole ? { r: 3 } : false}
                  activeDot={false}
                  isAnimationActive={false}
                />
              </LineChart>
            )}
            <svg className="sweep-layer" width={width} height={height} aria-hidden="true" focusable="false">
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
                upright={ask.present === null ? undefined : plot.x(ask.present)}
              />
              <PresentMark
                plot={plot}
                input={cell.name}
                result={result}
                low={low}
                high={high}
                say={x.figure}
              />
              {apart(named, LETTERING, plot.top, plot.bottom).map((it) => (
                <text
                  key={it.text}
                  className={it.soft ? 'sweep-letter' : 'sweep-letter sweep-bound'}
                  x={plot.right + 8}
                  y={it.placed + 4}
                >
                  {it.text}
                </text>
              ))}
              <text className="sweep-letter sweep-unit" x={plot.right + 12} y={plot.bottom + 14}>
                {x.noun?.[1] ?? unitWord(cell.unit, inchesOf(cell.unit) !== 1)}
              </text>
              <text className="sweep-letter sweep-unit" x={plot.left - 8} y={plot.top - 7} textAnchor="end">
                {unitWord(unit, inchesOf(unit) !== 1)}
              </text>
            </svg>
          </>
        )}
      </div>
      <p className="sweep-read type-small">
        {why ?? sentence}
        {why === undefined && cursor === undefined && tried === plan && (
          <>
            {' '}
            <Action icon="undo" says="Undo the value tried on the chart" onPress={() => session.undo()}>
              Undo
            </Action>
          </>
        )}
        {stale && <span className="sweep-stale base-soft"> Being worked out again.</span>}
      </p>
    </>
  );
});

const unitWord = (unit: string, inches: boolean): string => {
  if (unit === '–') return '';
  if (unit === 'deg') return '°';
  return inches ? 'in' : unit;
};
