import { isFailing } from '../look.ts';
import type { Evaluators, LimitColumns, PointEvaluator, PointRange, Points, Road } from '../points.ts';
import type { Progress, Study } from '../study.ts';
import { type MapAxis, valuesOf } from './axis.ts';
import { depthOf, leastOf } from './depth.ts';
import { holdingShare } from './holding-share.ts';
import { nodesOf } from './nodes.ts';
import { type Widest, widestSpot } from './widest.ts';

/** Two inputs varied together. */
export interface MapAsk {
  readonly scenario: string | null;
  readonly x: MapAxis;
  readonly y: MapAxis;
  /** Results whose contours are wanted. */
  readonly results: readonly string[];
  /** Values looked at along a side that is not a whole number. */
  readonly fineness: number;
}

/** How far inside its bound one limit stands at every point; only limits that fail somewhere are kept. */
export interface MapLimit {
  readonly name: string;
  readonly depth: Float32Array;
}

/** A map's points, row by row: the x values of the lowest y first. */
export interface Mapped {
  readonly ask: MapAsk;
  readonly xs: Float64Array;
  readonly ys: Float64Array;
  readonly results: readonly Float64Array[];
  readonly limits: readonly MapLimit[];
  /** The least room over all limits, as a room ratio; NaN where the inputs cannot be so together. */
  readonly least: Float32Array;
  /** 1 where the inputs cannot be so together. */
  readonly refused: Uint8Array;
  /** Share of the picture in which every limit holds, 0 to 1. */
  readonly share: number;
  /** Where the least room is largest; undefined where nothing has an answer. */
  readonly widest: Widest | undefined;
  readonly road: Road;
}

/** Points worked out between two looks at the clock: a replay is quick, the engine is not. */
const AT_ONCE = { replay: 1024, engine: 16 } as const;

const rangeOf = ({ input, low, high, whole, only }: MapAxis): PointRange =>
  only === undefined ? { name: input, low, high, whole } : { name: input, values: only };

interface Columns {
  readonly results: Float64Array[];
  readonly depths: Float32Array[];
  readonly fails: boolean[];
  readonly least: Float32Array;
  /** The least room over all limits but the one that has the least. */
  readonly second: Float32Array;
  readonly refused: Uint8Array;
}

/** Puts one limit's depths, and the least and second rooms as far as it has them. Gives back whether it fails anywhere. */
function putLimit(
  { state, ratio }: LimitColumns,
  { count, refused }: Points,
  depth: Float32Array,
  { least, second }: Columns,
  from: number,
): boolean {
  let fails = false;
  for (let i = 0; i < count; i++) {
    const [s, r] = [state[i] as number, ratio[i] as number];
    const here = leastOf(s, r);
    depth[from + i] = depthOf(s, r);
    const most = least[from + i] as number;
    if (here < most) {
      second[from + i] = most;
      least[from + i] = here;
    } else if (here < (second[from + i] as number)) second[from + i] = here;
    if (isFailing(s) && refused[i] === 0) fails = true;
  }
  return fails;
}

function put(points: Points, into: Columns, from: number): void {
  const { count, results, limits, refused } = points;
  results.forEach((column, n) => {
    (into.results[n] as Float64Array).set(column.subarray(0, count), from);
  });
  into.refused.set(refused.subarray(0, count), from);
  into.least.fill(Number.POSITIVE_INFINITY, from, from + count);
  into.second.fill(Number.POSITIVE_INFINITY, from, from + count);
  limits.forEach((limit, n) => {
    if (putLimit(limit, points, into.depths[n] as Float32Array, into, from)) into.fails[n] = true;
  });
  for (let i = 0; i < count; i++) if (refused[i] === 1) into.least[from + i] = Number.NaN;
}

function* fill(
  evaluator: PointEvaluator,
  xs: Float64Array,
  ys: Float64Array,
  atOnce: number,
): Generator<Progress, Columns, void> {
  const count = xs.length * ys.length;
  const into: Columns = {
    results: evaluator.results.map(() => new Float64Array(count)),
    depths: evaluator.limits.map(() => new Float32Array(count)),
    fails: evaluator.limits.map(() => false),
    least: new Float32Array(count),
    second: new Float32Array(count),
    refused: new Uint8Array(count),
  };
  const columns = [new Float64Array(atOnce), new Float64Array(atOnce)] as const;
  for (let from = 0; from < count; from += atOnce) {
    const some = Math.min(atOnce, count - from);
    for (let i = 0; i < some; i++) {
      columns[0][i] = xs[(from + i) % xs.length] as number;
      columns[1][i] = ys[Math.floor((from + i) / xs.length)] as number;
    }
    put(evaluator.evaluateMany(columns, some), into, from);
    yield { done: from + some, of: count };
  }
  return into;
}

/**
 * Varies two inputs together: how every limit stands at each point, the share of the picture in which all of them hold,
 * and the spot with the most room. Throws a sentence when a range cannot be.
 */
export function* map(evaluators: Evaluators, ask: MapAsk): Study<Mapped> {
  const { x, y, results, scenario, fineness } = ask;
  if (x.input === y.input) {
    throw new RangeError(`A map varies two inputs; ${x.input} was given for both.`);
  }
  const [xs, ys] = [valuesOf(x, fineness), valuesOf(y, fineness)];
  const evaluator = yield* evaluators.points(scenario, { inputs: [x.input, y.input], results }, [
    rangeOf(x),
    rangeOf(y),
  ]);
  const { road } = evaluator;
  const columns = yield* fill(evaluator, xs, ys, AT_ONCE[road.by]);
  const { least, second, refused } = columns;
  const widest = yield* widestSpot(evaluator, { x, y, xs, ys, least, second });
  const limits = evaluator.limits.flatMap((name, n): MapLimit[] =>
    columns.fails[n] === true ? [{ name, depth: columns.depths[n] as Float32Array }] : [],
  );
  const share = holdingShare(nodesOf(xs, x.whole), nodesOf(ys, y.whole), (i, j) => {
    const value = least[j * xs.length + i] as number;
    return Number.isNaN(value) ? -1 : value;
  });
  return { ask, xs, ys, results: columns.results, limits, least, refused, share, widest, road };
}
