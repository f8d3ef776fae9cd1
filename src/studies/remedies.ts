import { type Choice, candidates } from './candidates.ts';
import type { Evaluator, LimitSample } from './evaluator.ts';
import { compareHarm, compareTurned, mended, type Worsened, worsened } from './harm.ts';
import { nearest } from './nearest.ts';
import type { Progress, Study } from './study.ts';

export interface RemedyAsk {
  readonly limit: string;
  /** Choices that the limit follows from and that are free to be changed. */
  readonly choices: readonly Choice[];
  /** Bounds that the owner accepts; they are moved only when no choice helps. */
  readonly accepted: readonly Choice[];
}

/** One value tried. */
export interface Trial {
  readonly value: number;
  /** The limit as it then stands. */
  readonly limit: LimitSample;
  readonly worse: readonly Worsened[];
  /** Other limits that fail now and would hold. */
  readonly mends: readonly string[];
}

/** One choice that mends the limit by itself. */
export interface Remedy {
  readonly choice: string;
  readonly present: number;
  /** The nearest value at which the limit is better: not outside, or no longer near. */
  readonly first: Trial;
  /** The nearest value at which it is inside, when that is another one. */
  readonly inside: Trial | undefined;
}

export interface Remedies {
  /** The limit as it stands now. */
  readonly limit: LimitSample;
  /** Least harm first. */
  readonly remedies: readonly Remedy[];
  /** Whether only moving what the owner accepts helps. */
  readonly accepting: boolean;
}

const isInside = ({ state }: LimitSample): boolean => state === 'inside' || state === 'does not apply';

/**
 * What would mend a limit that is outside or near, one choice at a time: for each the nearest value on its step grid,
 * inside its usual range, that does, and what that value makes worse elsewhere. First come the choices that make the
 * fewest other limits turn, among those the ones that count things, then the ones that take least room. Throws when
 * there is no such limit.
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
  const isBetter = (now: LimitSample): boolean =>
    isInside(now) || (limit.state === 'outside' && now.state === 'near');
  const choices = ask.choices.length;
  let [done, tried] = [1, 0];

  function* search(choice: Choice): Generator<Progress, Remedy | undefined, void> {
    const seen = new Map<number, readonly LimitSample[]>();
    function* look(value: number): Generator<Progress, readonly LimitSample[], void> {
      const known = seen.get(value);
      if (known !== undefined) return known;
      const { limits } = evaluator.evaluate(new Map([[choice.name, value]]));
      seen.set(value, limits);
      done++;
      // What is left is guessed from what the choices so far have taken.
      yield { done, of: Math.max(done, Math.round((done * choices) / Math.max(1, tried + 1))) };
      return limits;
    }
    const distance = (value: number): number => Math.abs(value - choice.present);

    function* nearestWith(
      isGood: (now: LimitSample) => boolean,
    ): Generator<Progress, Trial | undefined, void> {
      let found: Trial[] = [];
      for (const direction of [1, -1] as const) {
        const furthest = found[0] === undefined ? Number.POSITIVE_INFINITY : distance(found[0].value) + 1e-9;
        const value = yield* nearest({
          values: candidates(choice, direction).filter((it) => distance(it) <= furthest),
          look,
          isGood: (limits) => isGood(there(limits)),
          merit: (limits) => there(limits).room,
          everyOne: limit.room === null,
        });
        if (value === undefined) continue;
        const limits = yield* look(value);
        const trial: Trial = {
          value,
          limit: there(limits),
          worse: worsened(start, limits, ask.limit),
          mends: mended(start, limits, ask.limit),
        };
        found = distance(value) < furthest - 2e-9 ? [trial] : [...found, trial];
      }
      return found.sort((a, b) => compareHarm(a.worse, b.worse))[0];
    }

    const first = yield* nearestWith(isBetter);
    if (first === undefined) return undefined;
    const inside = isInside(first.limit) ? undefined : yield* nearestWith(isInside);
    return { choice: choice.name, present: choice.present, first, inside };
  }

  function* searchAll(all: readonly Choice[]): Generator<Progress, Remedy[], void> {
    const found: Remedy[] = [];
    for (const choice of all) {
      const remedy = yield* search(choice);
      tried++;
      if (remedy !== undefined) found.push(remedy);
    }
    const counts = (it: Remedy): number =>
      all.find((choice) => choice.name === it.choice)?.counts === true ? 0 : 1;
    return found.sort(
      (a, b) =>
        compareTurned(a.first.worse, b.first.worse) ||
        counts(a) - counts(b) ||
        compareHarm(a.first.worse, b.first.worse) ||
        b.first.mends.length - a.first.mends.length,
    );
  }

  const found = yield* searchAll(ask.choices);
  if (found.length > 0) return { limit, remedies: found, accepting: false };
  const moved = yield* searchAll(ask.accepted);
  return { limit, remedies: moved, accepting: moved.length > 0 };
}
