import { remainder } from '../../remainder.ts';
import type { Lane } from '../lanes.ts';
import { plainFunctions } from '../rules/functions.ts';
import { DIVISION, NOT_FINITE } from '../scalar.ts';
import { type Fast, inEights, isOff, type Kernel, tell } from './kernel.ts';

const notFinite = () => NOT_FINITE;

// The commonest functions have a loop of their own, into which the machine's instruction goes straight.

function absolute(out: Lane, args: readonly [Lane]): Kernel {
  const r = out.numbers;
  const [arg] = args;
  const a = arg.numbers;
  return (count) => {
    const end = inEights(count);
    for (let i = 0; i < end; i += 4) {
      r[i] = Math.abs(a[i] as number);
      r[i + 1] = Math.abs(a[i + 1] as number);
      r[i + 2] = Math.abs(a[i + 2] as number);
      r[i + 3] = Math.abs(a[i + 3] as number);
    }
    out.clean = arg.clean;
    if (!arg.clean) tell(count, out, args, notFinite);
  };
}

function root(out: Lane, args: readonly [Lane]): Kernel {
  const r = out.numbers;
  const [{ numbers: a }] = args;
  return (count) => {
    const end = inEights(count);
    let finite = true;
    for (let i = 0; i < end; i += 4) {
      const r0 = Math.sqrt(a[i] as number);
      const r1 = Math.sqrt(a[i + 1] as number);
      const r2 = Math.sqrt(a[i + 2] as number);
      const r3 = Math.sqrt(a[i + 3] as number);
      r[i] = r0;
      r[i + 1] = r1;
      r[i + 2] = r2;
      r[i + 3] = r3;
      if (isOff(r0, r1, r2, r3)) finite = false;
    }
    out.clean = finite;
    if (!finite) tell(count, out, args, notFinite);
  };
}

function sine(out: Lane, args: readonly [Lane]): Kernel {
  const r = out.numbers;
  const [arg] = args;
  const a = arg.numbers;
  return (count) => {
    for (let i = 0; i < count; i++) r[i] = Math.sin(a[i] as number) + 0;
    out.clean = arg.clean;
    if (!arg.clean) tell(count, out, args, notFinite);
  };
}

function cosine(out: Lane, args: readonly [Lane]): Kernel {
  const r = out.numbers;
  const [arg] = args;
  const a = arg.numbers;
  return (count) => {
    for (let i = 0; i < count; i++) r[i] = Math.cos(a[i] as number) + 0;
    out.clean = arg.clean;
    if (!arg.clean) tell(count, out, args, notFinite);
  };
}

const TO_RADIANS = Math.PI / 180;

function radians(out: Lane, args: readonly [Lane]): Kernel {
  const r = out.numbers;
  const [arg] = args;
  const a = arg.numbers;
  return (count) => {
    for (let i = 0; i < count; i++) r[i] = (a[i] as number) * TO_RADIANS + 0;
    out.clean = arg.clean;
    if (!arg.clean) tell(count, out, args, notFinite);
  };
}

function ofOne(run: (value: number) => number, out: Lane, args: readonly [Lane]): Kernel {
  const r = out.numbers;
  const [{ numbers: a }] = args;
  return (count) => {
    let finite = true;
    for (let i = 0; i < count; i++) {
      const value = a[i] as number;
      const result = value === value ? run(value) + 0 : Number.NaN;
      r[i] = result;
      if (result - result !== 0) finite = false;
    }
    out.clean = finite;
    if (!finite) tell(count, out, args, notFinite);
  };
}

/** Functions of two numbers; where the result is not finite, `divides` tells whether it was a division by 0. */
function ofTwo(
  run: (first: number, second: number) => number,
  divides: (first: number, second: number) => boolean,
  out: Lane,
  args: readonly [Lane, Lane],
): Kernel {
  const r = out.numbers;
  const [{ numbers: a }, { numbers: b }] = args;
  return (count) => {
    let finite = true;
    for (let i = 0; i < count; i++) {
      const first = a[i] as number;
      const second = b[i] as number;
      const result = first === first && second === second ? run(first, second) + 0 : Number.NaN;
      r[i] = result;
      if (result - result !== 0) finite = false;
    }
    out.clean = finite;
    if (finite) return;
    tell(count, out, args, (i) => (divides(a[i] as number, b[i] as number) ? DIVISION : NOT_FINITE));
  };
}

const one =
  (make: (out: Lane, args: readonly [Lane]) => Kernel): Fast =>
  (out, [a]) =>
    a === undefined ? undefined : make(out, [a]);

const two =
  (
    run: (first: number, second: number) => number,
    divides: (first: number, second: number) => boolean = () => false,
  ): Fast =>
  (out, [a, b]) =>
    a === undefined || b === undefined ? undefined : ofTwo(run, divides, out, [a, b]);

const ROUNDED = new Set(['ROUND', 'ROUNDUP', 'ROUNDDOWN']);

/** One argument, or for a rounding two: left out, the places are none. */
const plain =
  (name: string, run: (first: number, second: number) => number): Fast =>
  (out, [a, b]) => {
    if (a === undefined) return undefined;
    if (b === undefined) return ofOne((value) => run(value, 0), out, [a]);
    return ROUNDED.has(name) ? ofTwo(run, () => false, out, [a, b]) : undefined;
  };

export const functionKernels: Readonly<Record<string, Fast>> = {
  ...Object.fromEntries(Object.entries(plainFunctions).map(([name, run]) => [name, plain(name, run)])),
  ABS: one(absolute),
  SQRT: one(root),
  SIN: one(sine),
  COS: one(cosine),
  RADIANS: one(radians),
  MOD: two(remainder, (_, divisor) => divisor === 0),
  ATAN2: two(
    (x, y) => (x === 0 && y === 0 ? Number.NaN : Math.atan2(y, x)),
    (x, y) => x === 0 && y === 0,
  ),
};
