import { look } from '../look.ts';
import type { Meter } from '../meter.ts';
import type { PointEvaluator } from '../points.ts';
import type { Progress } from '../study.ts';
import type { ErrorModel } from '../uncertain/error-model.ts';
import { furthest } from '../uncertain/reading-error.ts';

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

interface Corner {
  readonly place: number[];
  bad: number;
  fails: boolean;
  room: number;
}

/**
 * The worst case of every limit over the box of all errors: from the corner that the slopes point to, one reading
 * after another is moved to either end or the middle as long as that makes it worse. Exact where the room is linear;
 * elsewhere the worst that was found.
 */
export function* worstCases(
  evaluator: PointEvaluator,
  model: ErrorModel,
  /** For each limit, the change of its room by each reading to first order. */
  slopes: readonly (readonly number[])[],
  meter: Meter,
  /** None: only the corners that the slopes point to are looked at. */
  rounds = ROUNDS,
): Generator<Progress, Worst[], void> {
  const lines = linesOf(model);
  const corners = evaluator.limits.map((_, limit): Corner => {
    const place = lines.map(({ moves }) => {
      const slope = moves.reduce((sum, i) => sum + (slopes[limit]?.[i] ?? 0) * furthest1(model, i), 0);
      return -Math.sign(slope);
    });
    return { place, bad: Number.NEGATIVE_INFINITY, fails: false, room: Number.NaN };
  });

  function* evaluate(places: readonly (readonly number[])[]) {
    const columns = model.errors.map((error, i) => {
      const line = lines.findIndex((it) => it.moves.includes(i));
      return Float64Array.from(places, (it) => error.value + (it[line] ?? 0) * furthest(error));
    });
    meter.expect(places.length);
    return yield* look(evaluator, columns, places.length, meter);
  }

  const take = (corner: Corner, place: readonly number[], room: number, fails: boolean): boolean => {
    const bad = badness(room, fails);
    if (!(bad > corner.bad)) return false;
    corner.place.splice(0, corner.place.length, ...place);
    corner.bad = bad;
    corner.fails = fails;
    corner.room = room;
    return true;
  };

  const starts = [lines.map(() => 0), ...corners.map((it) => [...it.place])];
  const first = yield* evaluate(starts);
  for (const [limit, corner] of corners.entries()) {
    for (const [n, place] of starts.entries()) {
      take(corner, place, first.room[limit]?.[n] ?? Number.NaN, first.fails[limit]?.[n] === 1);
    }
  }
  // Which lines matter to which limit is seen from its own corner.
  let open = corners.map((_, limit) => limit);
  const matter = corners.map(() => new Set<number>());
  for (let round = 0; round < rounds && open.length > 0; round++) {
    const tries = open.flatMap((limit) => {
      const place: readonly number[] = corners[limit]?.place ?? [];
      const among = round === 0 ? lines.keys() : (matter[limit] ?? []);
      return [...among].flatMap((line) =>
        TRIED.filter((it) => it !== place[line]).map((it) => ({ limit, line, place: place.with(line, it) })),
      );
    });
    const looked = yield* evaluate(tries.map((it) => it.place));
    const improved = new Map<number, Map<number, Flip>>();
    for (const [n, { limit, line, place }] of tries.entries()) {
      const [room, fails] = [looked.room[limit]?.[n] ?? Number.NaN, looked.fails[limit]?.[n] === 1];
      const bad = badness(room, fails);
      const corner = corners[limit];
      if (corner === undefined) continue;
      if (bad !== corner.bad) matter[limit]?.add(line);
      if (!(bad > corner.bad)) continue;
      const ofLimit = improved.get(limit) ?? new Map<number, Flip>();
      improved.set(limit, ofLimit);
      if (bad > (ofLimit.get(line)?.bad ?? Number.NEGATIVE_INFINITY))
        ofLimit.set(line, { to: place[line] ?? 0, bad });
    }
    // All that made it worse by themselves are tried together, and the best of them alone.
    const next = [...improved].flatMap(([limit, ofLimit]) => {
      const place: readonly number[] = corners[limit]?.place ?? [];
      const together = place.map((it, line) => ofLimit.get(line)?.to ?? it);
      const [line, { to }] = [...ofLimit].reduce((a, b) => (b[1].bad > a[1].bad ? b : a));
      return [
        { limit, place: together },
        { limit, place: place.with(line, to) },
      ];
    });
    if (next.length === 0) break;
    const again = yield* evaluate(next.map((it) => it.place));
    for (const [n, { limit, place }] of next.entries()) {
      const corner = corners[limit];
      if (corner !== undefined)
        take(corner, place, again.room[limit]?.[n] ?? Number.NaN, again.fails[limit]?.[n] === 1);
    }
    open = [...improved.keys()];
  }
  return corners.map(({ place, room, fails }, limit) => ({
    room: Number.isNaN(room) ? null : room,
    fails,
    at: lines.flatMap(({ moves }, line) =>
      matter[limit]?.has(line) && place[line] !== 0
        ? moves.flatMap((i) => {
            const error = model.errors[i];
            return error === undefined
              ? []
              : [{ name: error.name, value: error.value + (place[line] ?? 0) * furthest(error) }];
          })
        : [],
    ),
  }));
}

function furthest1(model: ErrorModel, i: number): number {
  const error = model.errors[i];
  return error === undefined ? 0 : furthest(error);
}
