import { OPTIONS } from '../../engine-options.ts';
import type { Lane } from '../lanes.ts';
import { NOT_FINITE } from '../scalar.ts';
import { type Fast, inEights, isOff, type Kernel, tell } from './kernel.ts';

const EPSILON = OPTIONS.precisionEpsilon;

const notFinite = () => NOT_FINITE;

type Join = (into: Float64Array, next: Float64Array, count: number) => void;

/** Folds the arguments from left to right, then divides by their count where told. */
function folded(out: Lane, args: readonly Lane[], join: Join, divisor = 1): Kernel | undefined {
  const [first, ...rest] = args;
  if (first === undefined) return undefined;
  const r = out.numbers;
  const a = first.numbers;
  return (count) => {
    const end = inEights(count);
    for (let i = 0; i < end; i++) r[i] = a[i] as number;
    for (const { numbers } of rest) join(r, numbers, count);
    if (divisor !== 1) for (let i = 0; i < end; i++) r[i] = (r[i] as number) / divisor + 0;
    let finite = true;
    for (let i = 0; i < end; i += 4) {
      if (isOff(r[i] as number, r[i + 1] as number, r[i + 2] as number, r[i + 3] as number)) finite = false;
    }
    out.clean = finite;
    if (!finite) tell(count, out, args, notFinite);
  };
}

/** The lesser or greater of numbers is one of them, so it is in order when all of them are. */
function extreme(out: Lane, args: readonly Lane[], join: Join): Kernel | undefined {
  const [first, second, ...rest] = args;
  if (first === undefined || second === undefined) return folded(out, args, join);
  const r = out.numbers;
  const a = first.numbers;
  return (count) => {
    const end = inEights(count);
    for (let i = 0; i < end; i += 4) {
      r[i] = a[i] as number;
      r[i + 1] = a[i + 1] as number;
      r[i + 2] = a[i + 2] as number;
      r[i + 3] = a[i + 3] as number;
    }
    join(r, second.numbers, count);
    out.clean = first.clean && second.clean;
    for (const { numbers, clean } of rest) {
      join(r, numbers, count);
      out.clean = out.clean && clean;
    }
    if (!out.clean) tell(count, out, args, notFinite);
  };
}

function joinLeast(into: Float64Array, next: Float64Array, count: number): void {
  const end = inEights(count);
  for (let i = 0; i < end; i += 4) {
    into[i] = Math.min(into[i] as number, next[i] as number);
    into[i + 1] = Math.min(into[i + 1] as number, next[i + 1] as number);
    into[i + 2] = Math.min(into[i + 2] as number, next[i + 2] as number);
    into[i + 3] = Math.min(into[i + 3] as number, next[i + 3] as number);
  }
}

function joinGreatest(into: Float64Array, next: Float64Array, count: number): void {
  const end = inEights(count);
  for (let i = 0; i < end; i += 4) {
    into[i] = Math.max(into[i] as number, next[i] as number);
    into[i + 1] = Math.max(into[i + 1] as number, next[i + 1] as number);
    into[i + 2] = Math.max(into[i + 2] as number, next[i + 2] as number);
    into[i + 3] = Math.max(into[i + 3] as number, next[i + 3] as number);
  }
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
  MIN: (out, args) => extreme(out, args, joinLeast),
  MAX: (out, args) => extreme(out, args, joinGreatest),
  SUM: (out, args) => folded(out, args, joinSnapped),
  AVERAGE: (out, args) => folded(out, args, joinPlain, args.length),
  COUNT: (out, args) => countNumbers(out, args),
};
