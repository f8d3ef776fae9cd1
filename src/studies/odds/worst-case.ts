import { widening } from '../../calc/uncertainty/student-pair.ts';
import { type Looked, look } from '../look.ts';
import type { Meter } from '../meter.ts';
import type { PointEvaluator } from '../points.ts';
import type { Progress } from '../study.ts';
import type { ErrorModel } from '../uncertain/error-model.ts';
import { figureAt } from '../uncertain/fit-errors.ts';
import { FURTHEST, furthest, type ReadingError } from '../uncertain/reading-error.ts';

/** The least room found with every reading off by as much as it may be. */
export interface Worst {
  /** Null where no room was found at all. */
  readonly room: number | null;
  readonly fails: boolean;
  /** Readings there, those alone that matter to it; those of one survey table, `of`, are off together. */
  readonly at: readonly { readonly name: string; readonly value: number; readonly of?: string }[];
}

const ROUNDS = 6;
/** Places each coordinate is tried at, in half-widths. */
const TRIED = [-1, 0, 1];

/**
 * What moves along one line: a reading, all that wholly share one error, or the rows of a table with one of the two
 * errors of what is fitted through them.
 */
interface Line {
  readonly moves: readonly number[];
  /** Which of a fit's two errors it is. */
  readonly error?: 0 | 1;
}

function linesOf({ share, factors, errors, fits }: ErrorModel): Line[] {
  const fitted = fits.flatMap(({ rows, factors: [first, second] }) => [
    { moves: rows, error: 0, factor: first } as const,
    { moves: rows, error: 1, factor: second } as const,
  ]);
  const ofFits = new Set(fitted.map((it) => it.factor));
  const single =
    share === 1
      ? factors.flatMap(({ moves }, factor) => (ofFits.has(factor) ? [] : [{ moves }]))
      : errors.flatMap(({ fit }, i) => (fit === undefined ? [{ moves: [i] }] : []));
  return [...single, ...fitted];
}

/** How far an error of a fit is taken to go: as far as a normal one that is as wide at 95 %. */
const furthestOf = (freedom: number | null): number => FURTHEST * widening(freedom);

/** A line's other place, and how bad it is there. */
interface Flip {
  readonly to: number;
  readonly bad: number;
}

/** How bad a place is: no answer is worse than any room, what does not apply is no worse than the best. */
const badness = (room: number, fails: boolean): number =>
  Number.isNaN(room) ? (fails ? Number.POSITIVE_INFINITY : Number.NEGATIVE_INFINITY) : -room;

/** The worst place found for a limit: each line's place in half-widths. */
interface Corner {
  place: readonly number[];
  bad: number;
  fails: boolean;
  room: number;
  /** Lines that were seen to matter to it. */
  readonly matter: Set<number>;
}

/** A place tried for a limit; `line` was moved alone. */
interface Try {
  readonly limit: number;
  readonly place: readonly number[];
  readonly line: number;
}

/** How bad a limit is at one of the points looked at. */
function badAt({ room, fails }: Looked, limit: number, n: number) {
  const [here, isFailing] = [room[limit]?.[n] ?? Number.NaN, fails[limit]?.[n] === 1];
  return { bad: badness(here, isFailing), room: here, fails: isFailing };
}

/** Takes the place if it is worse. */
function take(corner: Corner, place: readonly number[], looked: Looked, limit: number, n: number): void {
  const here = badAt(looked, limit, n);
  if (here.bad > corner.bad) Object.assign(corner, here, { place });
}

/**
 * The worst case of every limit over the box of all errors: from the corner that the slopes point to, one reading
 * after another is moved to either end or the middle as long as that makes it worse. Exact where the room is linear;
 * elsewhere the worst that was found.
 */
export class WorstCases {
  readonly #evaluator: PointEvaluator;
  readonly #model: ErrorModel;
  readonly #meter: Meter;
  readonly #lines: readonly Line[];
  /** The lines that move each reading. */
  readonly #linesOf: readonly (readonly number[])[];
  readonly #corners: readonly Corner[];

  /** `slopes` are, for each limit, the change of its room by each reading to first order. */
  constructor(
    evaluator: PointEvaluator,
    model: ErrorModel,
    slopes: readonly (readonly number[])[],
    meter: Meter,
  ) {
    this.#evaluator = evaluator;
    this.#model = model;
    this.#meter = meter;
    this.#lines = linesOf(model);
    this.#linesOf = model.errors.map((_, i) =>
      this.#lines.flatMap(({ moves }, line) => (moves.includes(i) ? [line] : [])),
    );
    this.#corners = evaluator.limits.map((_, limit): Corner => {
      const place = this.#lines.map(({ moves, error }) => {
        const fall = (i: number): number => (slopes[limit]?.[i] ?? 0) * this.#reach(i, error);
        return -Math.sign(moves.reduce((sum, i) => sum + fall(i), 0));
      });
      const bad = Number.NEGATIVE_INFINITY;
      return { place, bad, fails: false, room: Number.NaN, matter: new Set() };
    });
  }

  /** Looks at the middle and at the corners that the slopes point to, each for every limit. */
  *begin(): Generator<Progress, void, void> {
    const starts = [this.#lines.map(() => 0), ...this.#corners.map((it) => it.place)];
    const looked = yield* this.#look(starts);
    for (const [limit, corner] of this.#corners.entries()) {
      for (const [n, place] of starts.entries()) take(corner, place, looked, limit, n);
    }
  }

  /** Goes on from there. `reached` lists, for each limit, the factors of the model that it follows at all. */
  *worsen(reached: readonly (readonly number[])[]): Generator<Progress, void, void> {
    let open = this.#corners.map((_, limit) => limit);
    for (let round = 0; round < ROUNDS && open.length > 0; round++) {
      const tries = open.flatMap((limit) => {
        const { place, matter } = this.#corners[limit] as Corner;
        return this.#tries(limit, place, round === 0 ? this.#linesReached(reached[limit] ?? []) : matter);
      });
      const improved = yield* this.#improved(tries);
      yield* this.#together(improved);
      open = [...improved.keys()];
    }
  }

  /** The worst found so far. */
  answer(): Worst[] {
    return this.#corners.map(({ place, room, fails, matter }) => ({
      room: Number.isNaN(room) ? null : room,
      fails,
      at: this.#moved(place, matter).map((i) => this.#at(i, place)),
    }));
  }

  /** Readings that lines which matter have moved, each once. */
  #moved(place: readonly number[], matter: ReadonlySet<number>): number[] {
    const moved = this.#lines.flatMap(({ moves }, line) =>
      matter.has(line) && place[line] !== 0 ? moves : [],
    );
    return [...new Set(moved)];
  }

  /** How far a reading moves along a line, to its end. */
  #reach(i: number, error: Line['error']): number {
    const reading = this.#model.errors[i] as ReadingError;
    if (reading.fit === undefined || error === undefined) return furthest(reading);
    return reading.fit.by[error] * furthestOf(reading.fit.freedom);
  }

  #at(i: number, place: readonly number[]): Worst['at'][number] {
    const { name, fit } = this.#model.errors[i] as ReadingError;
    return { name, value: this.#valueAt(i, place), ...(fit === undefined ? {} : { of: fit.of }) };
  }

  #valueAt(i: number, place: readonly number[]): number {
    const error = this.#model.errors[i] as ReadingError;
    const [first = -1, second = -1] = this.#linesOf[i] ?? [];
    const { fit } = error;
    if (fit === undefined) return error.value + (place[first] ?? 0) * furthest(error);
    const far = furthestOf(fit.freedom);
    return figureAt(fit, (place[first] ?? 0) * far, (place[second] ?? 0) * far);
  }

  #linesReached(factors: readonly number[]): Iterable<number> {
    const moved = new Set(factors.flatMap((it) => this.#model.factors[it]?.moves ?? []));
    return this.#lines.flatMap(({ moves }, line) => (moves.some((i) => moved.has(i)) ? [line] : []));
  }

  /** Every one of these lines moved to its other places. */
  #tries(limit: number, place: readonly number[], lines: Iterable<number>): Try[] {
    return [...lines].flatMap((line) =>
      TRIED.filter((it) => it !== place[line]).map((it) => ({ limit, line, place: place.with(line, it) })),
    );
  }

  *#look(places: readonly (readonly number[])[]): Generator<Progress, Looked, void> {
    const columns = this.#model.errors.map((_, i) => Float64Array.from(places, (it) => this.#valueAt(i, it)));
    this.#meter.expect(places.length);
    return yield* look(this.#evaluator, columns, places.length, this.#meter);
  }

  /** For each limit, the lines that made it worse by themselves. Which lines matter to it is seen from its corner. */
  *#improved(tries: readonly Try[]): Generator<Progress, Map<number, Map<number, Flip>>, void> {
    const looked = yield* this.#look(tries.map((it) => it.place));
    const improved = new Map<number, Map<number, Flip>>();
    for (const [n, { limit, line, place }] of tries.entries()) {
      const corner = this.#corners[limit] as Corner;
      const { bad } = badAt(looked, limit, n);
      if (bad !== corner.bad) corner.matter.add(line);
      if (!(bad > corner.bad)) continue;
      const ofLimit = improved.get(limit) ?? new Map<number, Flip>();
      improved.set(limit, ofLimit);
      if (bad > (ofLimit.get(line)?.bad ?? Number.NEGATIVE_INFINITY))
        ofLimit.set(line, { to: place[line] ?? 0, bad });
    }
    return improved;
  }

  /** All that made it worse by themselves are tried together, and the best of them alone. */
  *#together(improved: ReadonlyMap<number, ReadonlyMap<number, Flip>>): Generator<Progress, void, void> {
    const next = [...improved].flatMap(([limit, ofLimit]) => {
      const { place } = this.#corners[limit] as Corner;
      const together = place.map((it, line) => ofLimit.get(line)?.to ?? it);
      const [line, { to }] = [...ofLimit].reduce((a, b) => (b[1].bad > a[1].bad ? b : a));
      return [
        { limit, place: together },
        { limit, place: place.with(line, to) },
      ];
    });
    if (next.length === 0) return;
    const looked = yield* this.#look(next.map((it) => it.place));
    for (const [n, { limit, place }] of next.entries()) {
      take(this.#corners[limit] as Corner, place, looked, limit, n);
    }
  }
}
