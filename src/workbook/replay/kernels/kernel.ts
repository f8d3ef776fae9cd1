import type { Lane } from '../lanes.ts';
import type { Fault } from '../scalar.ts';

/** Works out one step over the first `count` points of the block. */
export type Kernel = (count: number) => void;

/** A step's work on slots that hold numbers or yes/no only; undefined when these slots need the rule itself. */
export type Fast = (out: Lane, args: readonly Lane[]) => Kernel | undefined;

/**
 * The hot loops take several points at a time, which halves what a loop costs around its sums. Past `count` they work
 * on what is left there; slots are long enough, and nobody looks.
 */
export const inEights = (count: number): number => (count + 7) & ~7;

/** Whether any of four numbers is not finite. */
export const isOff = (a: number, b: number, c: number, d: number): boolean =>
  a - a + (b - b) + (c - c) + (d - d) !== 0;

/** Fills the points from `count` to the next eighth with the last, so that no stale error slows the loops down. */
export function fillUp(lane: Lane, count: number): void {
  const { numbers } = lane;
  const last = numbers[count - 1] ?? 0;
  for (let i = count; i < inEights(count) && i < numbers.length; i++) numbers[i] = last;
}

/**
 * Tells the errors of a step at the points where its number is not finite: an argument's, the first that has one, else
 * the step's own. Only blocks with such a point come here.
 */
export function tell(count: number, out: Lane, args: readonly Lane[], own: (i: number) => Fault): void {
  const { numbers, faults } = out;
  out.clean = false;
  for (let i = 0; i < count; i++) {
    const value = numbers[i] as number;
    if (value - value === 0) continue;
    numbers[i] = Number.NaN;
    let told: Fault | undefined;
    for (let k = 0; k < args.length && told === undefined; k++) {
      const arg = args[k] as Lane;
      const given = arg.numbers[i] as number;
      if (given !== given) told = arg.faults[i];
    }
    faults[i] = told ?? own(i);
  }
}
