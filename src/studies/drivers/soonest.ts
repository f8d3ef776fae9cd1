import { look, presentTable } from '../look.ts';
import type { Meter } from '../meter.ts';
import type { PointEvaluator } from '../points.ts';
import type { Progress } from '../study.ts';
import type { Varied } from './varied.ts';

/** Multiples of an input's own error that are looked at, to each side. */
const MULTIPLES = [0.25, 0.5, 0.75, 1, 1.5, 2, 3, 4, 6, 8, 12, 16, 24, 32, 48, 64];
/** Values looked at inside a bracket in one round, and the rounds. */
const INSIDE = 8;
const ROUNDS = 8;

/** One input by itself changes how a limit stands. */
export interface Turn {
  readonly input: string;
  /** The last value found at which the limit still stands as now; the next one turns it. */
  readonly at: number;
  /** That value less the present one. */
  readonly by: number;
  /** How many times the input may be off that is. */
  readonly times: number;
}

interface Bracket {
  readonly limit: number;
  readonly input: number;
  readonly sign: number;
  /** Multiples of the error: the limit stands as now at `near` and otherwise at `far`. */
  readonly near: number;
  readonly far: number;
}

function within({ least, most }: Varied, value: number): boolean {
  return (least === undefined || value >= least) && (most === undefined || value <= most);
}

interface Place {
  readonly input: number;
  readonly multiple: number;
}

/** Which limits stand otherwise than now when single inputs are moved; one list of flags for each place. */
function* moved(
  evaluator: PointEvaluator,
  inputs: readonly Varied[],
  places: readonly Place[],
  meter: Meter,
): Generator<Progress, readonly Uint8Array[], void> {
  const columns = presentTable(
    inputs.map((it) => it.value),
    places.length,
  );
  for (const [n, { input, multiple }] of places.entries()) {
    const [column, varied] = [columns[input], inputs[input]];
    if (column !== undefined && varied !== undefined) column[n] = varied.value + multiple * varied.offBy;
  }
  meter.expect(places.length);
  return (yield* look(evaluator, columns, places.length, meter)).fails;
}

function firstBrackets(
  places: readonly Place[],
  fails: readonly Uint8Array[],
  now: readonly number[],
): Bracket[] {
  const found: Bracket[] = [];
  for (const [limit, failing] of fails.entries()) {
    const best = new Map<string, Bracket>();
    let near = 0;
    for (const [n, { input, multiple }] of places.entries()) {
      const before = places[n - 1];
      const isFirst = before?.input !== input || Math.sign(before.multiple) !== Math.sign(multiple);
      if (isFirst) near = 0;
      const key = `${input} ${Math.sign(multiple)}`;
      if (!best.has(key) && failing[n] !== now[limit]) {
        best.set(key, { limit, input, sign: Math.sign(multiple), near, far: Math.abs(multiple) });
      }
      near = Math.abs(multiple);
    }
    const all = [...best.values()];
    const soonest = Math.min(...all.map((it) => it.far));
    found.push(...all.filter((it) => it.near < soonest));
  }
  return found;
}

/**
 * For every limit, the input with an error that by itself would turn it soonest, counted in what each may be off;
 * null when none does within 64 times that. A limit that holds is broken by it, one that does not is mended.
 */
export function* soonest(
  evaluator: PointEvaluator,
  inputs: readonly Varied[],
  meter: Meter,
): Generator<Progress, (Turn | null)[], void> {
  const places = inputs.flatMap((varied, input) =>
    varied.offBy > 0 && !varied.whole
      ? [1, -1].flatMap((sign) =>
          MULTIPLES.map((it) => ({ input, multiple: sign * it })).filter((it) =>
            within(varied, varied.value + it.multiple * varied.offBy),
          ),
        )
      : [],
  );
  const now = (yield* moved(evaluator, inputs, [{ input: 0, multiple: 0 }], meter)).map((it) => it[0] ?? 0);
  let brackets = firstBrackets(places, yield* moved(evaluator, inputs, places, meter), now);
  for (let round = 0; round < ROUNDS && brackets.length > 0; round++) {
    const inside = brackets.flatMap(({ input, sign, near, far }) =>
      Array.from({ length: INSIDE }, (_, k) => ({
        input,
        multiple: sign * (near + ((far - near) * (k + 1)) / (INSIDE + 1)),
      })),
    );
    const fails = yield* moved(evaluator, inputs, inside, meter);
    brackets = brackets.map((bracket, b) => {
      const { limit, near, far } = bracket;
      const at = (k: number): number => near + ((far - near) * k) / (INSIDE + 1);
      for (let k = 1; k <= INSIDE; k++) {
        if (fails[limit]?.[b * INSIDE + k - 1] !== now[limit])
          return { ...bracket, near: at(k - 1), far: at(k) };
      }
      return { ...bracket, near: at(INSIDE) };
    });
  }
  return evaluator.limits.map((_, limit): Turn | null => {
    const [first] = brackets.filter((it) => it.limit === limit).sort((a, b) => a.far - b.far);
    const varied = first === undefined ? undefined : inputs[first.input];
    if (first === undefined || varied === undefined) return null;
    // A limit that is broken is named by its last good value, one that is mended by its first good one.
    const times = now[limit] === 1 ? first.far : first.near;
    const by = first.sign * times * varied.offBy;
    return { input: varied.name, at: varied.value + by, by, times };
  });
}
