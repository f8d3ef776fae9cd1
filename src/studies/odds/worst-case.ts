import { type Looked, look } from '../look.ts';
import type { Meter } from '../meter.ts';
import type { PointEvaluator } from '../points.ts';
import type { Progress } from '../study.ts';
import type { ErrorModel } from '../uncertain/error-model.ts';
import { furthest, type ReadingError } from '../uncertain/reading-error.ts';

/** The least room found with every reading off by as much as it may be. */
export interface Worst {
  /** Null where no room was found at all. */
  readonly room: number | null;
  readonly fails: boolean;
  /** Readings there, those alone that matter to it. */
  readonly at: readonly { readonly name: string; readonly value: number }[];
}

const ROUNDS = 6;
/** Places each coordinate is tried at, in half-widths. */
const TRIED = [-1, 0, 1];

/** One reading, or all that wholly share one error: it moves along one line. */
interface Line {
  readonly moves: readonly number[];
}

const linesOf = (model: ErrorModel): Line[] =>
  model.share === 1
    ? model.factors.map(({ moves }) => ({ moves }))
    : model.errors.map((_, i) => ({ moves: [i] }));

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
    this.#corners = evaluator.limits.map((_, limit): Corner => {
      const fall = (i: number): number => (slopes[limit]?.[i] ?? 0) * this.#furthest(i);
      const place = this.#lines.map(({ moves }) => -Math.sign(moves.reduce((sum, i) => sum + fall(i), 0)));
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
      at: this.#lines.flatMap(({ moves }, line) =>
        matter.has(line) && place[line] !== 0 ? moves.map((i) => this.#at(i, place[line] ?? 0)) : [],
      ),
    }));
  }

  #furthest(i: number): number {
    const error = this.#model.errors[i];
    return error === undefined ? 0 : furthest(error);
  }

  #at(i: number, place: number): Worst['at'][number] {
    const { name, value } = this.#model.errors[i] as ReadingError;
    return { name, value: value + place * this.#furthest(i) };
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
    const columns = this.#model.errors.map((error, i) => {
      const line = this.#lines.findIndex((it) => it.moves.includes(i));
      return Float64Array.from(places, (it) => error.value + (it[line] ?? 0) * furthest(error));
    });
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
