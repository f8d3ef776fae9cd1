import type { FirstMountAsk } from './ask.ts';

/** A stack of shims: how many sheets, how thick each, mm. */
export interface Stack {
  readonly count: number;
  readonly sheet: number;
}

/** As many sheets as a plan may hold. */
const MOST = 40;
/** Stacks this close are the same, mm. */
const SAME = 0.01;

/** Every stack up to the greatest allowed, the thinnest first; of those equally thick the one with the fewest sheets. */
export function stacksOf({ sheets, readings }: Pick<FirstMountAsk, 'sheets' | 'readings'>): readonly Stack[] {
  const thickest = readings.shim_stack_max;
  const all = sheets.flatMap((sheet) =>
    Array.from(
      { length: Math.min(MOST, Math.floor(thickest / sheet + SAME)) },
      (_, n): Stack => ({ count: n + 1, sheet }),
    ),
  );
  all.sort((a, b) => a.count * a.sheet - b.count * b.sheet || a.count - b.count);
  const none: Stack = { count: 0, sheet: sheets[0] ?? 0 };
  return all.reduce<Stack[]>(
    (kept, it) => {
      const last = kept.at(-1) as Stack;
      if (it.count * it.sheet - last.count * last.sheet > SAME) kept.push(it);
      return kept;
    },
    [none],
  );
}

/** Stacks thicker than any that is allowed: what they would keep says whether the stack's bound is what stands in the way. */
export function thickerThan(
  stacks: readonly Stack[],
  { sheets }: Pick<FirstMountAsk, 'sheets'>,
): readonly Stack[] {
  const { count, sheet } = stacks.at(-1) as Stack;
  const first = sheets[0] as number;
  const most = Math.ceil((count * sheet) / first);
  return [1, 2, 4, 8, 16, 32]
    .map((it) => most + it)
    .filter((it) => it <= MOST)
    .map((it) => ({ count: it, sheet: first }));
}
