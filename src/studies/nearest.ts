import type { Progress } from './study.ts';

/** Values skipped are never more than this share of all. */
const LOOKS = 24;

interface Search<S> {
  /** Nearest first. */
  readonly values: readonly number[];
  readonly look: (value: number) => Generator<Progress, S, void>;
  readonly isGood: (sample: S) => boolean;
  /** How near a sample comes to being good; more is better. Null where that cannot be told. */
  readonly merit: (sample: S) => number | null;
  /** Whether every value is looked at, because the merit says nothing. */
  readonly everyOne: boolean;
}

/**
 * The first value that is good. It looks at every value close by, further out only at some: where one of those is good,
 * the first good one before it is found by halving, and where one is better than both its neighbours, all between them
 * are looked at, as they are before the last. Undefined when none is good.
 */
export function* nearest<S>(search: Search<S>): Generator<Progress, number | undefined, void> {
  const { values, look, isGood, merit, everyOne } = search;
  const stride = everyOne ? 1 : Math.max(1, Math.ceil(values.length / LOOKS));
  const at = (i: number): number => values[i] as number;

  function* isGoodAt(i: number): Generator<Progress, boolean, void> {
    return isGood(yield* look(at(i)));
  }

  function* firstOf(from: number, to: number): Generator<Progress, number | undefined, void> {
    for (let i = from; i < to; i++) if (yield* isGoodAt(i)) return at(i);
    return undefined;
  }

  function* halve(bad: number, good: number): Generator<Progress, number, void> {
    let [low, high] = [bad, good];
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if (yield* isGoodAt(middle)) high = middle;
      else low = middle;
    }
    return at(high);
  }

  const close = yield* firstOf(0, Math.min(stride, values.length));
  if (close !== undefined || values.length <= stride) return close;
  const last = values.length - 1;
  const merits: { readonly i: number; readonly merit: number }[] = [];
  for (let i = 0; ; i = Math.min(i === 0 ? Math.max(1, stride - 1) : i + stride, last)) {
    const sample = yield* look(at(i));
    if (isGood(sample)) return yield* halve(merits.at(-1)?.i ?? -1, i);
    merits.push({ i, merit: merit(sample) ?? Number.NEGATIVE_INFINITY });
    const [a, b, c] = merits.slice(-3);
    if (a !== undefined && b !== undefined && c !== undefined && b.merit >= a.merit && b.merit > c.merit) {
      const found = yield* firstOf(a.i + 1, c.i);
      if (found !== undefined) return found;
    }
    if (i === last) return yield* firstOf(last - stride + 1, last);
  }
}
