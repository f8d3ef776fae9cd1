import { searchDips } from './dip.ts';
import type { Evaluator, LimitSample } from './evaluator.ts';
import { fails, type Standing, standingOf } from './standing.ts';
import { type Range, stopsOf, widened } from './stops.ts';
import type { Progress, Study } from './study.ts';

/** One input varied: over which values, and which results are kept. */
export interface SweepAsk extends Range {
  readonly input: string;
  readonly results: readonly string[];
}

export interface SweepPoint {
  readonly x: number;
  /** The results asked for, in the order asked. */
  readonly values: readonly (number | null)[];
  readonly limits: readonly LimitSample[];
  /** Why the input cannot have this value. */
  readonly refused?: string | undefined;
}

/** A limit that stands otherwise above a value than below it. */
export interface Turning {
  readonly limit: string;
  /**
   * The turning value: for a whole-number input the first step that stands otherwise, else the end of the bracket at
   * which the limit holds, so that the value named never fails.
   */
  readonly at: number;
  /** Last value known to stand as `from`, and first known to stand as `to`. */
  readonly below: number;
  readonly above: number;
  readonly from: Standing;
  readonly to: Standing;
}

export interface Swept {
  readonly ask: SweepAsk;
  readonly points: readonly SweepPoint[];
  /** Rising. */
  readonly turnings: readonly Turning[];
}

/** Brackets are halved until they are this share of the range. */
const WITHIN = 1e-6;

function turningsBetween(low: SweepPoint, high: SweepPoint, whole: boolean): Turning[] {
  return low.limits.flatMap((before, i) => {
    const after = high.limits[i];
    if (after === undefined) return [];
    const [from, to] = [standingOf(before), standingOf(after)];
    if (from === to) return [];
    const at = whole || fails(from) || !fails(to) ? high.x : low.x;
    return [{ limit: before.name, at, below: low.x, above: high.x, from, to }];
  });
}

function pointAt(evaluator: Evaluator, ask: SweepAsk, x: number): SweepPoint {
  const sample = evaluator.evaluate(new Map([[ask.input, x]]));
  return {
    x,
    values: ask.results.map((name) => sample.value(name)),
    limits: sample.limits,
    refused: sample.refused,
  };
}

/** Varies one input and looks no further: the results alone, once for each evaluator, as scenarios to lay together. */
export function* trace(
  evaluators: readonly Evaluator[],
  ask: SweepAsk,
): Study<readonly (readonly SweepPoint[])[]> {
  const stops = stopsOf(ask);
  const of = stops.length * evaluators.length;
  let done = 0;
  const lines: SweepPoint[][] = [];
  for (const evaluator of evaluators) {
    const points: SweepPoint[] = [];
    for (const x of stops) {
      points.push(pointAt(evaluator, ask, x));
      done++;
      yield { done, of };
    }
    lines.push(points);
  }
  return lines;
}

/**
 * Varies one input and finds every value at which a limit turns. Between two points a limit is taken to turn once at
 * most, unless its room dips towards the bound there; then the dip is searched. Throws a sentence when the range
 * cannot be.
 */
export function* sweep(evaluator: Evaluator, ask: SweepAsk): Study<Swept> {
  const stops = stopsOf(ask);
  const { low, high } = widened(ask);
  const tolerance = WITHIN * (high - low);
  let done = 0;

  function* look(x: number): Generator<Progress, SweepPoint, void> {
    const point = pointAt(evaluator, ask, x);
    done++;
    yield { done, of: Math.max(done, stops.length) };
    return point;
  }

  function* refine(a: SweepPoint, b: SweepPoint): Generator<Progress, Turning[], void> {
    const turned = turningsBetween(a, b, false);
    if (turned.length === 0 || b.x - a.x <= tolerance) return turned;
    const middle = a.x + (b.x - a.x) / 2;
    if (middle <= a.x || middle >= b.x) return turned;
    const between = yield* look(middle);
    return [...(yield* refine(a, between)), ...(yield* refine(between, b))];
  }

  const points: SweepPoint[] = [];
  for (const x of stops) points.push(yield* look(x));
  const turnings: Turning[] = [];
  const nodes = ask.whole
    ? points
    : [...points, ...(yield* searchDips(points, look))].sort((p, q) => p.x - q.x);
  for (const [n, node] of nodes.entries()) {
    const next = nodes[n + 1];
    if (next === undefined) break;
    turnings.push(...(ask.whole ? turningsBetween(node, next, true) : yield* refine(node, next)));
  }
  return { ask, points, turnings };
}
