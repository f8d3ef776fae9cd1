import type { Evaluators, PointRange } from '../points.ts';
import type { Progress, Study } from '../study.ts';
import { type Conflict, type FirstMount, type FirstMountAsk, MADE } from './ask.ts';
import { Bench, type Judged, TUBES, type Watch } from './bench.ts';
import { every, OF_STRUTS } from './every.ts';
import { frees } from './frees.ts';
import { Grid } from './grid.ts';
import { Misses } from './misses.ts';
import { improve, search } from './search.ts';
import { stacksOf, thickerThan } from './stacks.ts';

const SEED = 1;

/** Ends of ranges are multiples of this, so that a proof serves the next boat too, mm. */
const COARSE = 1000;
/** How far below and above the face brackets, feet and shaft may come, mm. */
const BEYOND = 500;

const STAGES = {
  search: 'Drawing up mounts',
  every: 'Looking at every shim count and both bracket heights',
  frees: 'Looking for what would free it',
} as const;

/** What every choice is varied over. */
function rangesOf({ readings: by, sheets, wedge }: FirstMountAsk): PointRange[] {
  const low = Math.floor((by.transom_bottom - by.shaft_length / 2 - BEYOND) / COARSE) * COARSE;
  const high = Math.ceil((by.transom_top + by.shaft_length + BEYOND) / COARSE) * COARSE;
  const side = Math.ceil(by.transom_half_breadth / COARSE) * COARSE;
  return MADE.map((name): PointRange => {
    switch (name) {
      case 'strut_count':
        return { name, low: 1, high: 2, whole: true };
      case 'shim_count':
        return { name, low: 0, high: 40, whole: true };
      case 'shim_thickness':
        return { name, low: Math.min(...sheets), high: Math.max(...sheets) };
      case 'wedge_edge':
        return { name, low: 0, high: wedge };
      case 'shaft_offset':
      case 'shaft_lean':
      case 'single_foot_y':
        return { name, values: [0] };
      case 'port_foot_y':
      case 'starboard_foot_y':
        return { name, low: -side, high: side };
      default:
        return { name, low, high };
    }
  });
}

/** Limits on which none of these choices has a hold. */
const without = (
  made: readonly string[],
  { decides }: FirstMountAsk,
  limits: readonly string[],
): readonly string[] => limits.filter((it) => !made.some((name) => decides.get(it)?.has(name) !== false));

const NONE: ReadonlySet<string> = new Set();

/**
 * A first mount for a boat: drawn up by a rule from its readings all over the face, and improved by small changes until
 * no limit gains room. Where none keeps every limit, every stack of shims and both bracket heights are looked at on a
 * 10 mm grid; where none does there either, it says which few limits conflict and what would free them. Throws a sentence
 * when a reading is missing.
 */
export function* firstMount(evaluators: Evaluators, ask: FirstMountAsk): Study<FirstMount> {
  const missing = Object.entries(ask.readings).find(([, value]) => !Number.isFinite(value));
  if (missing !== undefined) throw new RangeError(`No mount can be worked out: ${missing[0]} has no value.`);
  const { readings, scenario } = ask;
  const ranges = rangesOf(ask);
  const grid = new Grid(ask.step);
  const evaluator = yield* evaluators.points(scenario, { inputs: MADE, results: TUBES }, ranges);
  const { limits, road } = evaluator;
  const fixed = without(MADE, ask, limits);
  const bench = new Bench(ask, evaluator, grid, new Set(fixed));
  const all = new Bench(ask, evaluator, grid, NONE);
  const stacks = stacksOf(ask);
  const misses = new Misses(limits);
  const missed = misses.watching(limits.filter((it) => !fixed.includes(it)));
  let [best, news]: [Judged | undefined, boolean] = [undefined, false];
  const watch: Watch = (seen) => {
    missed(seen);
    const better = bench.best(seen, best);
    if (better !== best) [best, news] = [better, true];
  };
  const answer = ({ sketch }: Judged, rest: Pick<FirstMount, 'conflicts' | 'unfinished'>): FirstMount => {
    const { values, failing } = all.judge([sketch]).at(0);
    return { mount: { values, failing }, looked: bench.looked, road, ...rest };
  };
  const told = function* <T>(part: Generator<Progress, T, void>, stage: string): Study<T> {
    for (let step = part.next(); ; step = part.next()) {
      if (step.done === true) return step.value;
      yield {
        ...step.value,
        stage,
        ...(news && best !== undefined ? { soFar: answer(best, { conflicts: [], unfinished: true }) } : {}),
      };
      news = false;
    }
  };
  /** The best mount known; a function, so that what a watch has set in between is seen. */
  const known = (): Judged | undefined => best;

  for (const struts of [2, 1] as const) {
    yield* told(search({ readings, stacks, struts, watch, seed: SEED }, bench), STAGES.search);
    if (known()?.failing.length === 0) break;
  }
  const searched = known();
  if (searched === undefined) throw new RangeError('No mount can be drawn up on this face.');
  const conflicts: Omit<Conflict, 'frees'>[] = all
    .judge([searched.sketch])
    .at(0)
    .failing.filter((it) => fixed.includes(it))
    .map((it) => ({ limits: [it], how: 'no choice', isSmallest: true }));
  const onGrid = new Misses(limits);
  if (searched.failing.length > 0) {
    // Limits that fail at every mount are no reason to look no further into the others.
    const hopeless = bench.unmet.filter((it) => !fixed.includes(it));
    const isRest = hopeless.length > 0 && searched.failing.some((it) => !hopeless.includes(it));
    const ignored = new Set(isRest ? [...fixed, ...hopeless] : fixed);
    const mounts = isRest ? new Bench(ask, evaluator, grid, ignored) : bench;
    const ofFrames = without(OF_STRUTS, ask, limits).filter((it) => !fixed.includes(it));
    const asked = { inputs: MADE, results: [], limits: ofFrames };
    const frames = new Bench(ask, yield* evaluators.points(scenario, asked, ranges), grid, ignored);
    const isJudged = (it: string): boolean => !ignored.has(it);
    const looking = every({
      readings,
      stacks,
      thicker: thickerThan(stacks, ask),
      frames: { bench: frames, watch: onGrid.watching(ofFrames.filter(isJudged)) },
      mounts: { bench: mounts, watch: onGrid.watching(limits.filter(isJudged)) },
    });
    const holds = yield* told(looking, STAGES.every);
    if (holds !== undefined) {
      const { struts } = holds.sketch;
      const improving = improve([holds], { readings, stacks, struts, watch: missed, seed: SEED }, mounts);
      best = yield* told(improving, STAGES.search);
    }
    const never = hopeless.filter(
      (it) => mounts.unmet.includes(it) && (frames.unmet.includes(it) || !ofFrames.includes(it)),
    );
    if (never.length > 0) conflicts.push({ limits: never, how: 'each alone', isSmallest: true });
    if (holds === undefined && (isRest || never.length === 0))
      conflicts.push({ ...onGrid.smallest(), how: 'together' });
  }
  const mount = known() ?? searched;
  const near = [mount, ...misses.mounts, ...onGrid.mounts];
  const sets = conflicts.map((it) => it.limits);
  const freed = yield* told(frees(evaluators, ask, near, sets, ranges, grid), STAGES.frees);
  return answer(mount, { conflicts: conflicts.map((it, n) => ({ ...it, frees: freed[n] ?? [] })) });
}
