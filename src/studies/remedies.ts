import type { Evaluator, LimitSample, Sample } from './evaluator.ts';
import { standingOf } from './standing.ts';
import type { Progress, Study } from './study.ts';

/** A choice that may be moved. */
export interface Movable {
  readonly name: string;
  readonly present: number;
  readonly low: number;
  readonly high: number;
  readonly whole: boolean;
  /** Values stand on multiples of this; 1 for a whole number. */
  readonly step: number;
}

export interface RemedyAsk {
  readonly limit: string;
  readonly choices: readonly Movable[];
}

/** A limit before and after. */
export interface Moved {
  readonly before: LimitSample;
  readonly after: LimitSample;
}

/** The value of one choice, nearest to the present one, that mends a limit, and what it does to the others. */
export interface Remedy {
  readonly choice: string;
  readonly value: number;
  readonly mended: Moved;
  /** Limits that stand worse than before, the worst first. */
  readonly worse: readonly Moved[];
  /** The limit that loses the largest share of its room without standing worse. */
  readonly costliest: Moved | undefined;
}

/** Values looked at in each direction before the step grid is searched between two of them. */
const COARSE = 24;

const RANK: Readonly<Record<LimitSample['state'], number>> = {
  'does not apply': 0,
  inside: 0,
  near: 1,
  past: 2,
  'no answer': 3,
};

const named = (sample: { readonly limits: readonly LimitSample[] }, name: string): LimitSample | undefined =>
  sample.limits.find((it) => it.name === name);

/** Grid values from the present one towards an end, thinned to about COARSE, the end among them. */
function stopsTowards({ present, step }: Movable, end: number): number[] {
  const direction = Math.sign(end - present);
  if (direction === 0) return [];
  const first = direction > 0 ? Math.floor(present / step + 1e-9) + 1 : Math.ceil(present / step - 1e-9) - 1;
  const last = direction > 0 ? Math.floor(end / step + 1e-9) : Math.ceil(end / step - 1e-9);
  const count = (last - first) * direction + 1;
  if (count <= 0) return [];
  const stride = Math.max(1, Math.ceil(count / COARSE));
  const stops: number[] = [];
  for (let i = 0; i < count; i += stride) stops.push((first + i * direction) * step);
  if (stops.at(-1) !== last * step) stops.push(last * step);
  return stops.map((it) => Number(it.toPrecision(12)));
}

function movedBy(
  before: readonly LimitSample[],
  after: readonly LimitSample[],
  limit: string,
): Pick<Remedy, 'worse' | 'costliest'> {
  const worse: Moved[] = [];
  let costliest: Moved | undefined;
  let cost = 0.02;
  for (const [i, was] of before.entries()) {
    const now = after[i];
    if (now === undefined || was.name === limit) continue;
    if (RANK[now.state] > RANK[was.state]) worse.push({ before: was, after: now });
    else if (was.ratio !== null && now.ratio !== null && was.ratio - now.ratio > cost) {
      cost = was.ratio - now.ratio;
      costliest = { before: was, after: now };
    }
  }
  worse.sort(
    (a, b) => RANK[b.after.state] - RANK[a.after.state] || (a.after.ratio ?? -1) - (b.after.ratio ?? -1),
  );
  return { worse, costliest };
}

/** How many limits end up past or without an answer that did not stand so before. */
const newlyFailing = ({ worse }: Remedy): number =>
  worse.filter((it) => RANK[it.after.state] >= RANK.past).length;

const harm = ({ worse, costliest }: Remedy): number =>
  worse.reduce((sum, it) => sum + 10 ** RANK[it.after.state], 0) +
  (costliest === undefined ? 0 : (costliest.before.ratio ?? 0) - (costliest.after.ratio ?? 0));

/**
 * What would mend a limit that is past or near: for every choice the nearest value on its step grid, inside its usual
 * range, at which a past limit holds or a near one is inside; those that push no other limit past first. Yields after every evaluation.
 */
export function* remedies(evaluator: Evaluator, ask: RemedyAsk): Study<readonly Remedy[]> {
  let done = 0;
  const of = 1 + ask.choices.length * (COARSE + 8);
  function* look(choice: string | undefined, value: number): Generator<Progress, Sample, void> {
    const sample = evaluator.evaluate(choice === undefined ? new Map() : new Map([[choice, value]]));
    done++;
    yield { done, of: Math.max(of, done) };
    return { ...sample, limits: [...sample.limits], value: () => null };
  }

  const now = yield* look(undefined, 0);
  const limit = named(now, ask.limit);
  if (limit === undefined) return [];
  const wanted = (sample: Sample): boolean => {
    const it = named(sample, ask.limit);
    if (it === undefined || sample.refused !== undefined) return false;
    return limit.state === 'near' ? it.state === 'inside' : standingOf(it) === 'holds';
  };

  const found: Remedy[] = [];
  for (const choice of ask.choices) {
    const best: { value: number; sample: Sample }[] = [];
    for (const end of [choice.low, choice.high]) {
      let before = choice.present;
      for (const stop of stopsTowards(choice, end)) {
        let sample = yield* look(choice.name, stop);
        if (!wanted(sample)) {
          before = stop;
          continue;
        }
        let good = stop;
        // Between the last failing stop and this one, the nearest grid value is found by halving.
        for (
          let steps = Math.round(Math.abs(good - before) / choice.step);
          steps > 1;
          steps = Math.round(Math.abs(good - before) / choice.step)
        ) {
          const middle = Number(
            (Math.round((before + good) / 2 / choice.step) * choice.step).toPrecision(12),
          );
          if (middle === before || middle === good) break;
          const there = yield* look(choice.name, middle);
          if (wanted(there)) {
            good = middle;
            sample = there;
          } else before = middle;
        }
        best.push({ value: good, sample });
        break;
      }
    }
    best.sort((a, b) => Math.abs(a.value - choice.present) - Math.abs(b.value - choice.present));
    const nearest = best[0];
    const after = nearest === undefined ? undefined : named(nearest.sample, ask.limit);
    if (nearest === undefined || after === undefined) continue;
    found.push({
      choice: choice.name,
      value: nearest.value,
      mended: { before: limit, after },
      ...movedBy(now.limits, nearest.sample.limits, ask.limit),
    });
  }
  // Whole-number choices come first among equals: a sheet more or less is quicker than another hole.
  const isWhole = (it: Remedy): number =>
    ask.choices.find((choice) => choice.name === it.choice)?.whole === true ? 0 : 1;
  return found.sort(
    (a, b) => newlyFailing(a) - newlyFailing(b) || isWhole(a) - isWhole(b) || harm(a) - harm(b),
  );
}
