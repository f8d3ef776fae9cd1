import { Meter } from './meter.ts';
import type { Evaluators } from './points.ts';
import { fails } from './standing.ts';
import type { Study } from './study.ts';
import type { LimitTurns, TurningAsk, Turnings, TurningValue } from './turning/ask.ts';
import { closeIn } from './turning/brackets.ts';
import { followDips } from './turning/dips.ts';
import { closestOf, NARROW, nearest, ruleOut, STEEPER, steepest } from './turning/rule-out.ts';
import { type Spot, Track } from './turning/track.ts';
import { wholeStops } from './turning/whole-stops.ts';

export type { LimitTurns, TurningAsk, Turnings, TurningValue } from './turning/ask.ts';

/** Evenly spread values looked at first. */
const GRID = 257;
/** A turning value is known to this part of the range. */
const WITHIN = 1e-10;
/** A least distance is followed to this part of the range. */
const DIP_WITHIN = 1e-8;
/** Slopes over less than this part of the range are rounding as much as slope. */
const SLOPE_OVER = 1e-6;

function turnsOf(spots: readonly Spot[], limit: number, whole: boolean): TurningValue[] {
  return spots.flatMap((spot, n): TurningValue[] => {
    const before = spots[n - 1];
    const [from, to] = [before?.standing[limit], spot.standing[limit]];
    if (before === undefined || from === undefined || to === undefined || from === to) return [];
    const at = whole || fails(from) || !fails(to) ? spot.x : before.x;
    return [{ below: before.x, above: spot.x, at, from, to }];
  });
}

function certainty(
  spots: readonly Spot[],
  limit: number,
  reckoned: number,
  range: number,
): Pick<LimitTurns, 'surely' | 'complete'> {
  // A room that proved steeper than was reckoned with leaves nothing to be sure of.
  if ((steepest(spots, SLOPE_OVER * range)[limit] ?? 0) > reckoned) return { surely: null, complete: false };
  let [surely, complete] = [Number.POSITIVE_INFINITY, true];
  for (const [n, spot] of spots.entries()) {
    const next = spots[n + 1];
    if (next === undefined || next.standing[limit] !== spot.standing[limit]) continue;
    const least = nearest(spot, next, limit, reckoned);
    if (Number.isNaN(least)) continue;
    surely = Math.min(surely, least);
    if (least <= 0 && next.x - spot.x > NARROW * range) complete = false;
  }
  return { surely: surely > 0 && Number.isFinite(surely) ? surely : null, complete };
}

/**
 * Every value in an input's range at which each limit turns; where it never does, how far from its bound it stays.
 * Throws a sentence when the range cannot be.
 */
export function* turning(evaluators: Evaluators, ask: TurningAsk): Study<Turnings> {
  const { input, low, high, whole, present } = ask;
  if (!(Number.isFinite(low) && Number.isFinite(high) && low < high)) {
    throw new RangeError(
      `A range from ${low} to ${high} was asked for: it must go from a number to a greater one.`,
    );
  }
  const meter = new Meter();
  const evaluator = yield* evaluators.points(
    ask.scenario,
    { inputs: [input], results: [], ...(ask.limits === undefined ? {} : { limits: ask.limits }) },
    [{ name: input, low, high, whole }],
  );
  const track = new Track(evaluator, meter);
  let slopes: readonly number[] = [];
  if (whole) {
    yield* track.visit(wholeStops(low, high, ask.only));
  } else {
    const range = high - low;
    yield* track.visit(
      Array.from({ length: GRID }, (_, i) => (i === GRID - 1 ? high : low + (range * i) / (GRID - 1))),
    );
    slopes = steepest(track.spots).map((it) => STEEPER * it);
    yield* closeIn(track, WITHIN * range);
    yield* ruleOut(track, range, slopes);
    yield* followDips(track, DIP_WITHIN * range);
    yield* closeIn(track, WITHIN * range);
    if (present !== null && present >= low && present <= high) yield* track.visit([present]);
  }
  const { spots } = track;
  const limits = evaluator.limits.map((limit, i): LimitTurns => {
    const turns = turnsOf(spots, i, whole);
    const closest = turns.length > 0 ? null : closestOf(spots, i);
    const sure = whole
      ? { surely: closest === null ? null : Math.abs(closest.room), complete: true }
      : certainty(spots, i, slopes[i] ?? 0, high - low);
    return {
      limit,
      turns,
      first: spots[0]?.standing[i] ?? 'no answer',
      closest,
      surely: turns.length > 0 ? null : sure.surely,
      complete: sure.complete,
      moved: turns.length > 0 || spots.some((it) => !Object.is(it.room[i], spots[0]?.room[i])),
    };
  });
  return { road: evaluator.road, ask, limits, evaluations: spots.length };
}
