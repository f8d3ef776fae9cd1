import { type Again, again } from './drivers/again.ts';
import { type Share, shares } from './drivers/shares.ts';
import { type Slope, steeper } from './drivers/slope.ts';
import { slopes } from './drivers/slopes.ts';
import { soonest, type Turn } from './drivers/soonest.ts';
import { errorsAmong, type Varied } from './drivers/varied.ts';
import { isFailing } from './look.ts';
import { Meter } from './meter.ts';
import type { Evaluators, Road } from './points.ts';
import type { Progress, Study } from './study.ts';
import { errorModel } from './uncertain/error-model.ts';
import { reaches } from './uncertain/reaches.ts';
import { furthest } from './uncertain/reading-error.ts';

/** What moves the limits: which inputs may move, and of which limits the shares of variance are wanted. */
export interface DriversAsk {
  readonly scenario: string | null;
  readonly inputs: readonly Varied[];
  /** Limits whose shares are worked out; slopes and the soonest turn are given for every limit. */
  readonly limits: readonly string[];
  /** How far readings with one instrument share their error, 0 to 1. */
  readonly share: number;
  readonly seed: number;
}

/** One input's hold on one limit, or that of all rows of a survey table together. */
export interface Driver {
  /** The input, or the table. */
  readonly input: string;
  /** How far it may be off; a row by itself, where it is a table. */
  readonly offBy: number;
  readonly table?: true;
  readonly slope: Slope;
  /** Change of room for all that the input may be off, the steeper side: its sign is the slope's. */
  readonly perOffBy: number;
}

export interface LimitDrivers {
  readonly limit: string;
  readonly holds: boolean;
  readonly room: number | null;
  /** Inputs that move its room, the strongest per error first; those without an error after them. */
  readonly drivers: readonly Driver[];
  readonly soonest: Turn | null;
  /** Of the limits asked for: shares of variance, the largest first, and which readings are worth taking again. */
  readonly shares?: readonly Share[];
  readonly again?: readonly Again[];
}

export interface Drivers {
  readonly road: Road;
  /** A first answer: what turns a limit soonest was not looked for yet, and shares, if any, are from few draws. */
  readonly first?: true;
  readonly limits: readonly LimitDrivers[];
}

const REPEATS = 16;
const POINTS = 128;
/** Points in each repeat of the first estimate. */
const FEW_POINTS = 16;
const CERTAINTY = 0.95;
/** Factors whose measurement is tried again for each limit. */
const MOST_AGAIN = 6;

const reachOf = ({ value, offBy, law, whole, step = 1 }: Varied): readonly [number, number] => {
  const far = whole ? 1 : Math.max(64 * furthest({ offBy, law }), Math.abs(value) / 100, step / 100);
  return [value - far, value + far];
};

/** What all rows of a table do together, each off by itself: the root of the sum of squares. */
function driverOfTable(of: string, rows: readonly Driver[]): Driver {
  const perOffBy = Math.hypot(...rows.map((it) => it.perOffBy));
  const offBy = Math.hypot(...rows.map((it) => it.offBy)) / Math.sqrt(rows.length);
  const steep = perOffBy / offBy;
  const slope = { left: steep, right: steep, kink: false, within: 0 };
  return { input: of, table: true, offBy, slope, perOffBy };
}

function driversOf(inputs: readonly Varied[], ofLimit: readonly (Slope | null)[] | undefined): Driver[] {
  const single: Driver[] = [];
  const tables = new Map<string, Driver[]>();
  for (const [i, { name, offBy, fit }] of inputs.entries()) {
    const slope = ofLimit?.[i];
    const steep = slope === null || slope === undefined ? 0 : steeper(slope);
    if (slope === null || slope === undefined || steep === 0) continue;
    const driver = { input: name, offBy, slope, perOffBy: steep * offBy };
    if (fit === undefined) single.push(driver);
    else tables.set(fit.of, [...(tables.get(fit.of) ?? []), driver]);
  }
  const fitted = [...tables].map(([of, rows]) => driverOfTable(of, rows));
  return [...single, ...fitted].sort((a, b) => Math.abs(b.perOffBy) - Math.abs(a.perOffBy));
}

/** What moves each limit, what would break or mend it soonest, and which measurement is worth taking again. */
export function* drivers(evaluators: Evaluators, ask: DriversAsk): Study<Drivers> {
  const meter = new Meter();
  const { inputs } = ask;
  const ranges = inputs.map((it) => {
    const [low, high] = reachOf(it);
    return { name: it.name, low, high, whole: it.whole };
  });
  const everything = yield* evaluators.points(
    ask.scenario,
    { inputs: inputs.map((it) => it.name), results: [] },
    ranges,
  );
  const present = everything.evaluateMany(
    inputs.map((it) => [it.value]),
    1,
  );
  const now = present.limits.map(({ state, room }) => ({
    state: state[0] ?? 0,
    room: room[0] ?? Number.NaN,
  }));
  const steep = yield* slopes(everything, inputs, meter);
  interface OfLimit {
    readonly shares: readonly Share[];
    readonly again?: readonly Again[];
  }
  const answer = (turns: readonly (Turn | null)[], found: ReadonlyMap<string, OfLimit>): Drivers => ({
    road: everything.road,
    limits: everything.limits.map((limit, i) => ({
      limit,
      holds: !isFailing(now[i]?.state),
      room: Number.isNaN(now[i]?.room) ? null : (now[i]?.room ?? null),
      drivers: driversOf(inputs, steep[i]),
      soonest: turns[i] ?? null,
      ...found.get(limit),
    })),
  });
  const early = (found: ReadonlyMap<string, OfLimit>): Progress => ({
    ...meter.did(0),
    soFar: { ...answer([], found), first: true } satisfies Drivers,
  });
  yield early(new Map());

  const errors = errorsAmong(inputs);
  const model = errorModel(errors, ask.share);
  const asked = ask.limits.filter((it) => everything.limits.includes(it));
  const found = new Map<string, OfLimit>();
  if (asked.length > 0 && errors.length > 0) {
    const some = yield* evaluators.points(
      ask.scenario,
      { inputs: errors.map((it) => it.name), results: [], limits: asked },
      errors.map((it) => ({ name: it.name, low: it.value - furthest(it), high: it.value + furthest(it) })),
    );
    const reached = yield* reaches(some, model, ask.seed, meter);
    const factors = [...new Set(reached.flat())].sort((a, b) => a - b);
    const settings = { factors, repeats: REPEATS, points: POINTS, seed: ask.seed, certainty: CERTAINTY };
    const bySize = (all: readonly Share[]): Share[] => all.toSorted((a, b) => b.total.value - a.total.value);
    const few = yield* shares(some, model, { ...settings, points: FEW_POINTS }, meter);
    yield early(new Map(some.limits.map((limit, i) => [limit, { shares: bySize(few[i] ?? []) }])));
    const shared = yield* shares(some, model, settings, meter);
    const largest = shared.map(bySize);
    const tried = [...new Set(largest.flatMap((it) => it.slice(0, MOST_AGAIN)).map((it) => it.factor))];
    const places = tried.map((it) => model.factors.indexOf(it));
    const better = yield* again(some, model, places, ask.seed, meter);
    for (const [i, limit] of some.limits.entries()) {
      const of = new Set(largest[i]?.slice(0, MOST_AGAIN).map((it) => it.factor));
      found.set(limit, {
        shares: largest[i] ?? [],
        again: (better[i] ?? []).filter((it) => of.has(it.factor)).sort((a, b) => a.better - b.better),
      });
    }
  }
  return answer(yield* soonest(everything, inputs, meter), found);
}
