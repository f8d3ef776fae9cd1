import { OPTIONS } from '../../engine-options.ts';
import type { Lane } from '../lanes.ts';
import { NOT_FINITE } from '../scalar.ts';
import { type Fast, type Kernel, tell } from './kernel.ts';

const EPSILON = OPTIONS.precisionEpsilon;

const notFinite = () => NOT_FINITE;

/** Folds the arguments from left to right, then lets `finish` see to each point. */
function folded(
  out: Lane,
  args: readonly Lane[],
  join: (into: Float64Array, next: Float64Array, count: number) => void,
  divisor = 1,
): Kernel | undefined {
  const [first, ...rest] = args;
  if (first === undefined) return undefined;
  const r = out.numbers;
  return (count) => {
    const a = first.numbers;
    for (let i = 0; i < count; i++) r[i] = a[i] as number;
    for (const { numbers } of rest) join(r, numbers, count);
    if (divisor !== 1) for (let i = 0; i < count; i++) r[i] = (r[i] as number) / divisor + 0;
    let finite = true;
    for (let i = 0; i < count; i++) {
      const value = r[i] as number;
      if (value - value !== 0) finite = false;
    }
    out.clean = finite;
    if (!finite) tell(count, out, args, notFinite);
  };
}

function joinLeast(into: Float64Array, next: Float64Array, count: number): void {
  for (let i = 0; i < count; i++) into[i] = Math.min(into[i] as number, next[i] as number);
}

function joinGreatest(into: Float64Array, next: Float64Array, count: number): void {
  for (let i = 0; i < count; i++) into[i] = Math.max(into[i] as number, next[i] as number);
}

function joinSnapped(into: Float64Array, next: Float64Array, count: number): void {
  for (let i = 0; i < count; i++) {
    const left = into[i] as number;
    const sum = left + (next[i] as number);
    into[i] = Math.abs(sum) < EPSILON * Math.abs(left) ? 0 : sum;
  }
}

function joinPlain(into: Float64Array, next: Float64Array, count: number): void {
  for (let i = 0; i < count; i++) into[i] = (into[i] as number) + (next[i] as number);
}

function countNumbers(out: Lane, args: readonly Lane[]): Kernel {
  const r = out.numbers;
  return (count) => {
    r.fill(0, 0, count);
    for (const { numbers } of args) {
      for (let i = 0; i < count; i++) if (numbers[i] === numbers[i]) r[i] = (r[i] as number) + 1;
    }
    out.clean = true;
  };
}

export const aggregateKernels: Readonly<Record<string, Fast>> = {
  MIN: (out, args) => folded(out, args, joinLeast),
  MAX: (out, args) => folded(out, args, joinGreatest),
  SUM: (out, args) => folded(out, args, joinSnapped),
  AVERAGE: (out, args) => folded(out, args, joinPlain, args.length),
  COUNT: (out, args) => countNumbers(out, args),
};
