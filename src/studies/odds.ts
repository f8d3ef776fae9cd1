import { steeper } from './drivers/slope.ts';
import { slopes } from './drivers/slopes.ts';
import { isFailing } from './look.ts';
import { Meter } from './meter.ts';
import type { Followed, LimitOdds, Odds, OddsAsk, Sampled } from './odds/ask.ts';
import { designPoints } from './odds/design-points.ts';
import { firstOrder } from './odds/first-order.ts';
import { type Rare, rare } from './odds/rare.ts';
import { ScoredRoom } from './odds/rooms-at.ts';
import { type SampledAll, sampled } from './odds/sampled.ts';
import { isOpen, isSearched, SEARCHED, SMALL } from './odds/searched.ts';
import { type Worst, WorstCases } from './odds/worst-case.ts';
import type { Evaluators } from './points.ts';
import type { Progress, Study } from './study.ts';
import { type ErrorModel, errorModel } from './uncertain/error-model.ts';
import { reaches } from './uncertain/reaches.ts';
import { furthest } from './uncertain/reading-error.ts';

export type { Followed, LimitOdds, Odds, OddsAsk, Sampled } from './odds/ask.ts';

/** Draws of the first estimate. */
const FIRST = { repeats: 8, points: 64 };
const RARE_REPEATS = 16;
const RARE_POINTS = 1024;
/** Most centres sampled about for all limits together. */
const MOST_CENTRES = 16;

/** Factors of the model by how much they matter to all limits, the most first. */
function byWeight(model: ErrorModel, parts: readonly (readonly number[])[]): number[] {
  const shares = parts.flatMap((ofLimit) => {
    const all = ofLimit.reduce((a, b) => a + b * b, 0);
    return all > 0 ? [ofLimit.map((it) => (it * it) / all)] : [];
  });
  const weight = model.factors.map(({ moves }) =>
    shares.reduce((sum, ofLimit) => moves.reduce((a, i) => a + (ofLimit[i] ?? 0), sum), 0),
  );
  return model.factors.map((_, i) => i).sort((a, b) => (weight[b] ?? 0) - (weight[a] ?? 0) || a - b);
}

interface RareFound {
  readonly rare: Rare;
  readonly centres: readonly (readonly number[])[];
}

/** Hits of a sample that show a way to fail which the search for design points missed; fewer may be chance. */
const MISSED = 8;

/** Whether a chance found about its design points is told: a small one, unless the sample shows that more was missed. */
const isTold = ({ fails }: Rare, { fails: plain, hits }: Sampled): boolean =>
  fails.value < SMALL && (hits < MISSED || fails.high >= plain.low);

function* rareOf(
  evaluators: Evaluators,
  ask: OddsAsk,
  model: ErrorModel,
  limit: string,
  factors: readonly number[],
  meter: Meter,
): Generator<Progress, RareFound, void> {
  const evaluator = yield* pointsFor(evaluators, ask, [limit]);
  const room = new ScoredRoom(evaluator, model, 0, factors, meter);
  const centres = (yield* designPoints(room, ask.seed)).map(({ scores }) => {
    const all: number[] = Array(model.factors.length).fill(0);
    for (const [i, factor] of factors.entries()) all[factor] = scores[i] ?? 0;
    return all;
  });
  const { seed, certainty } = ask;
  const settings = { repeats: RARE_REPEATS, points: RARE_POINTS, seed, certainty };
  return { rare: yield* rare(evaluator, model, centres, settings, meter), centres };
}

const pointsFor = (
  evaluators: Evaluators,
  { scenario, errors, follow = [] }: OddsAsk,
  limits?: readonly string[],
) =>
  evaluators.points(
    scenario,
    {
      inputs: errors.map((it) => it.name),
      results: limits === undefined ? follow : [],
      ...(limits === undefined ? {} : { limits }),
    },
    errors.map((it) => ({ name: it.name, low: it.value - furthest(it), high: it.value + furthest(it) })),
  );

/**
 * The chance that each limit, and all of them together, hold, given how far every reading may be off: the worst case,
 * the first order and a sample side by side; small chances by sampling about every design point found.
 */
export function* odds(evaluators: Evaluators, ask: OddsAsk): Study<Odds> {
  const meter = new Meter();
  const { errors } = ask;
  const model = errorModel(errors, ask.share);
  const evaluator = yield* pointsFor(evaluators, ask);
  const present = evaluator.evaluateMany(
    errors.map((it) => [it.value]),
    1,
  );
  const values = present.results.map((it) => it[0] ?? Number.NaN);
  const now = present.limits.map(({ state, room }) => ({
    fails: isFailing(state[0]),
    room: room[0] ?? Number.NaN,
  }));
  const steep = yield* slopes(
    evaluator,
    errors.map((it) => ({ ...it, whole: false })),
    meter,
  );
  const single = steep.map((of) => of.map((it) => (it === null ? 0 : steeper(it))));
  const parts = single.map((of) => of.map((it, i) => it * (errors[i]?.offBy ?? 0)));
  const order = byWeight(model, parts);
  const answer = (
    worst: readonly Worst[],
    all: SampledAll,
    rares: ReadonlyMap<number, RareFound>,
    together?: Rare,
  ): Odds => {
    const limits = evaluator.limits.map((limit, i): LimitOdds => {
      const ofLimit = all.limits[i] ?? all.together;
      const found = rares.get(i);
      const isRare = found !== undefined && isTold(found.rare, ofLimit);
      const room = now[i]?.room ?? Number.NaN;
      return {
        limit,
        room: Number.isNaN(room) ? null : room,
        holds: now[i]?.fails === false,
        firstOrder: firstOrder(model, room, steep[i]),
        worst: worst[i] ?? { room: null, fails: false, at: [] },
        sampled: ofLimit,
        ...(isRare ? { rare: found.rare } : {}),
      };
    });
    const chances = limits.flatMap((it) => (it.firstOrder === null ? [] : [it.firstOrder.fails]));
    const sum = chances.reduce((a, b) => a + b, 0);
    return {
      road: evaluator.road,
      limits,
      followed: evaluator.results.flatMap((name, i): Followed[] => {
        const { low = Number.NaN, high = Number.NaN } = all.results[i] ?? {};
        const value = values[i] ?? Number.NaN;
        return Number.isFinite(value) && Number.isFinite(low) ? [{ name, value, low, high }] : [];
      }),
      together: {
        sampled: all.together,
        ...(together === undefined ? {} : { rare: together }),
        firstOrder: chances.length === 0 ? null : Math.min(1, sum),
        worstHolds: worst.every((it) => !it.fails),
      },
    };
  };
  const worstCases = new WorstCases(evaluator, model, single, meter);
  yield* worstCases.begin();
  const few = yield* sampled(evaluator, model, order, { ...ask, ...FIRST }, meter);
  yield {
    ...meter.did(0),
    soFar: { ...answer(worstCases.answer(), few, new Map()), first: true } satisfies Odds,
  };

  const reached = yield* reaches(evaluator, model, ask.seed, meter);
  yield* worstCases.worsen(reached);
  const worst = worstCases.answer();
  const all = yield* sampled(evaluator, model, order, ask, meter);
  const rares = new Map<number, RareFound>();
  for (const [i, limit] of evaluator.limits.entries()) {
    const { fails = true, room = Number.NaN } = now[i] ?? {};
    const ofLimit = reached[i] ?? [];
    const open = isOpen(model, ofLimit, firstOrder(model, room, steep[i]));
    if (!isSearched(!fails, worst[i], all.limits[i], open)) continue;
    rares.set(i, yield* rareOf(evaluators, ask, model, limit, ofLimit, meter));
  }
  if (all.together.fails.value >= SEARCHED || rares.size === 0) return answer(worst, all, rares);
  const centres = [...rares.values()]
    .flatMap((it) => it.centres)
    .sort((a, b) => Math.hypot(...a) - Math.hypot(...b))
    .slice(0, MOST_CENTRES);
  const { seed, certainty } = ask;
  const settings = { repeats: RARE_REPEATS, points: RARE_POINTS, seed, certainty };
  const together = yield* rare(evaluator, model, centres, settings, meter);
  return answer(worst, all, rares, isTold(together, all.together) ? together : undefined);
}
