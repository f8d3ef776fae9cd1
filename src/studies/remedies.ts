import { type Choice, candidates } from './candidates.ts';
import type { Evaluator, LimitSample } from './evaluator.ts';
import {
  compareFailing,
  compareHarm,
  failingAmong,
  mended,
  newlyFailing,
  type Worsened,
  worsened,
} from './harm.ts';
import { nearest } from './nearest.ts';
import type { Progress, Study } from './study.ts';

export interface RemedyAsk {
  readonly limit: string;
  /** Choices and parts that the limit follows from and that are free to be changed. */
  readonly choices: readonly Choice[];
  /** Bounds that the owner accepts; they are moved only when nothing else helps. */
  readonly accepted: readonly Choice[];
}

/** What an input is set to. */
export interface Setting {
  readonly input: string;
  readonly value: number | boolean;
}

/** One value tried. */
export interface Trial {
  readonly value: number;
  readonly sets: readonly Setting[];
  /** The limit as it then stands. */
  readonly limit: LimitSample;
  readonly worse: readonly Worsened[];
  /** Other limits that fail now and would hold. */
  readonly mends: readonly string[];
  /** How many limits then are outside or without an answer. */
  readonly failing: number;
}

/** One change that mends the limit by itself. */
export interface Remedy {
  readonly choice: string;
  /** The inputs that it sets. */
  readonly inputs: readonly string[];
  readonly present: number;
  /** The nearest value at which the limit is better: not outside, or no longer near. */
  readonly first: Trial;
  /** The nearest value at which it is inside, when that is another one and puts no more limits outside. */
  readonly inside: Trial | undefined;
}

export interface Remedies {
  /** The limit as it stands now. */
  readonly limit: LimitSample;
  /** How many limits are outside or without an answer now. */
  readonly failing: number;
  /** Least harm first. */
  readonly remedies: readonly Remedy[];
  /**
   * What the remedies do: change the mount or a part; move what the owner accepts, when no such change helps; or only
   * make that the limit does not apply, when that does not help either.
   */
  readonly by: 'change' | 'accepting' | 'leaving';
}

const isInside = ({ state }: LimitSample): boolean => state === 'inside';

const setsOf = ({ name, also = [], isFlag }: Choice, value: number): readonly Setting[] =>
  [name, ...also].map((input) => ({ input, value: isFlag === true ? value === 1 : value }));

/**
 * What would mend a limit that is outside or near, one change at a time: for each the nearest value on its step grid,
 * inside its usual range, that does, and what that value makes worse elsewhere. A value that puts no other limit
 * outside goes before a nearer one that does. First come the changes after which no more limits are outside than now,
 * then those that put the fewest other limits outside, among those the ones that count things, then the ones that do
 * least harm otherwise. Throws when there is no such limit.
 */
export function* remedies(evaluator: Evaluator, ask: RemedyAsk): Study<Remedies> {
  const start = evaluator.evaluate(new Map()).limits;
  const index = start.findIndex((it) => it.name === ask.limit);
  const there = (limits: readonly LimitSample[]): LimitSample => {
    const found = limits[index];
    if (found === undefined) throw new Error(`There is no limit named ${ask.limit}.`);
    return found;
  };
  const limit = there(start);
  const failing = failingAmong(start);
  const isBetter = (now: LimitSample): boolean =>
    isInside(now) || (limit.state === 'outside' && now.state === 'near');
  const known = new Map<Choice, Map<number, readonly LimitSample[]>>();
  const choices = ask.choices.length;
  let [done, tried] = [1, 0];

  /** What a choice's value gives, looked at once. */
  function* lookAt(choice: Choice, value: number): Generator<Progress, readonly LimitSample[], void> {
    const seen = known.get(choice) ?? new Map<number, readonly LimitSample[]>();
    known.set(choice, seen);
    const before = seen.get(value);
    if (before !== undefined) return before;
    const { limits } = evaluator.evaluate(
      new Map(setsOf(choice, value).map((it) => [it.input, it.value] as const)),
    );
    seen.set(value, limits);
    done++;
    // What is left is guessed from what the choices so far have taken.
    yield { done, of: Math.max(done, Math.round((done * choices) / Math.max(1, tried + 1))) };
    return limits;
  }

  function* nearestWith(
    choice: Choice,
    isGood: (limits: readonly LimitSample[]) => boolean,
  ): Generator<Progress, Trial | undefined, void> {
    const distance = (value: number): number => Math.abs(value - choice.present);
    let found: Trial[] = [];
    for (const direction of [1, -1] as const) {
      const furthest = found[0] === undefined ? Number.POSITIVE_INFINITY : distance(found[0].value) + 1e-9;
      const value = yield* nearest({
        values: candidates(choice, direction).filter((it) => distance(it) <= furthest),
        look: (it) => lookAt(choice, it),
        isGood,
        merit: (limits) => there(limits).room,
        everyOne: limit.room === null,
      });
      if (value === undefined) continue;
      const limits = yield* lookAt(choice, value);
      const trial: Trial = {
        value,
        sets: setsOf(choice, value),
        limit: there(limits),
        worse: worsened(start, limits, ask.limit),
        mends: mended(start, limits, ask.limit),
        failing: failingAmong(limits),
      };
      found = distance(value) < furthest - 2e-9 ? [trial] : [...found, trial];
    }
    return found.sort((a, b) => compareHarm(a.worse, b.worse))[0];
  }

  /** The nearest value with which the limit is as asked: one that puts at most so many others outside, if there is one. */
  function* mildest(
    choice: Choice,
    isAsked: (now: LimitSample) => boolean,
  ): Generator<Progress, Trial | undefined, void> {
    const isGood = (limits: readonly LimitSample[]): boolean => isAsked(there(limits));
    const isMild = (limits: readonly LimitSample[]): boolean =>
      isGood(limits) && newlyFailing(start, limits, ask.limit) === 0;
    return (yield* nearestWith(choice, isMild)) ?? (yield* nearestWith(choice, isGood));
  }

  function* search(
    choice: Choice,
    isAsked: (now: LimitSample) => boolean,
  ): Generator<Progress, Remedy | undefined, void> {
    const first = yield* mildest(choice, isAsked);
    if (first === undefined) return undefined;
    const most = first.worse.filter((it) => it.how === 'outside' || it.how === 'no answer').length;
    const inside =
      first.limit.state === 'near'
        ? yield* nearestWith(
            choice,
            (limits) => isInside(there(limits)) && newlyFailing(start, limits, ask.limit) <= most,
          )
        : undefined;
    const inputs = first.sets.map((it) => it.input);
    return { choice: choice.name, inputs, present: choice.present, first, inside };
  }

  function* searchAll(
    all: readonly Choice[],
    isAsked: (now: LimitSample) => boolean,
  ): Generator<Progress, Remedy[], void> {
    const found: Remedy[] = [];
    const counting = new Set<Remedy>();
    for (const choice of all) {
      const remedy = yield* search(choice, isAsked);
      tried++;
      if (remedy === undefined) continue;
      found.push(remedy);
      if (choice.counts) counting.add(remedy);
    }
    const leavesMore = ({ first }: Remedy): number => (first.failing > failing ? 1 : 0);
    const counts = (it: Remedy): number => (counting.has(it) ? 0 : 1);
    return found.sort(
      (a, b) =>
        leavesMore(a) - leavesMore(b) ||
        compareFailing(a.first.worse, b.first.worse) ||
        counts(a) - counts(b) ||
        compareHarm(a.first.worse, b.first.worse) ||
        b.first.mends.length - a.first.mends.length,
    );
  }

  const changes = yield* searchAll(ask.choices, isBetter);
  if (changes.length > 0) return { limit, failing, remedies: changes, by: 'change' };
  const moved = yield* searchAll(ask.accepted, isBetter);
  if (moved.length > 0) return { limit, failing, remedies: moved, by: 'accepting' };
  const left = yield* searchAll(ask.choices, (now) => now.state === 'does not apply');
  return { limit, failing, remedies: left, by: left.length > 0 ? 'leaving' : 'change' };
}
