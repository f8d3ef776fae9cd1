import { OPTIONS } from '../../engine-options.ts';
import type { Lane } from '../lanes.ts';
import { DIVISION, NOT_FINITE } from '../scalar.ts';
import { type Fast, inEights, isOff, type Kernel, tell } from './kernel.ts';

const EPSILON = OPTIONS.precisionEpsilon;

const notFinite = () => NOT_FINITE;

// Each loop is written out: one loop that is handed its operation runs several times slower. The sums of one point are
// functions small enough for the machine to put in place. Adding 0 turns a negative zero into 0.

const sum = (left: number, right: number): number => {
  const result = left + right;
  return Math.abs(result) < EPSILON * Math.abs(left) ? 0 : result;
};

const difference = (left: number, right: number): number => {
  const result = left - right;
  return Math.abs(result) < EPSILON * Math.abs(left) ? 0 : result;
};

const product = (left: number, right: number): number => left * right + 0;

const quotient = (left: number, right: number): number => left / right + 0;

/** Whatever to the power of 0 is 1, an error too, which must stay one. */
const raised = (base: number, exponent: number): number =>
  base === base ? base ** exponent + 0 : Number.NaN;

function add(out: Lane, args: readonly [Lane, Lane]): Kernel {
  const r = out.numbers;
  const [{ numbers: a }, { numbers: b }] = args;
  return (count) => {
    const end = inEights(count);
    let finite = true;
    for (let i = 0; i < end; i += 8) {
      const r0 = sum(a[i] as number, b[i] as number);
      const r1 = sum(a[i + 1] as number, b[i + 1] as number);
      const r2 = sum(a[i + 2] as number, b[i + 2] as number);
      const r3 = sum(a[i + 3] as number, b[i + 3] as number);
      const r4 = sum(a[i + 4] as number, b[i + 4] as number);
      const r5 = sum(a[i + 5] as number, b[i + 5] as number);
      const r6 = sum(a[i + 6] as number, b[i + 6] as number);
      const r7 = sum(a[i + 7] as number, b[i + 7] as number);
      r[i] = r0;
      r[i + 1] = r1;
      r[i + 2] = r2;
      r[i + 3] = r3;
      r[i + 4] = r4;
      r[i + 5] = r5;
      r[i + 6] = r6;
      r[i + 7] = r7;
      if (isOff(r0, r1, r2, r3) || isOff(r4, r5, r6, r7)) finite = false;
    }
    out.clean = finite;
    if (!finite) tell(count, out, args, notFinite);
  };
}

function subtract(out: Lane, args: readonly [Lane, Lane]): Kernel {
  const r = out.numbers;
  const [{ numbers: a }, { numbers: b }] = args;
  return (count) => {
    const end = inEights(count);
    let finite = true;
    for (let i = 0; i < end; i += 8) {
      const r0 = difference(a[i] as number, b[i] as number);
      const r1 = difference(a[i + 1] as number, b[i + 1] as number);
      const r2 = difference(a[i + 2] as number, b[i + 2] as number);
      const r3 = difference(a[i + 3] as number, b[i + 3] as number);
      const r4 = difference(a[i + 4] as number, b[i + 4] as number);
      const r5 = difference(a[i + 5] as number, b[i + 5] as number);
      const r6 = difference(a[i + 6] as number, b[i + 6] as number);
      const r7 = difference(a[i + 7] as number, b[i + 7] as number);
      r[i] = r0;
      r[i + 1] = r1;
      r[i + 2] = r2;
      r[i + 3] = r3;
      r[i + 4] = r4;
      r[i + 5] = r5;
      r[i + 6] = r6;
      r[i + 7] = r7;
      if (isOff(r0, r1, r2, r3) || isOff(r4, r5, r6, r7)) finite = false;
    }
    out.clean = finite;
    if (!finite) tell(count, out, args, notFinite);
  };
}

function multiply(out: Lane, args: readonly [Lane, Lane]): Kernel {
  const r = out.numbers;
  const [{ numbers: a }, { numbers: b }] = args;
  return (count) => {
    const end = inEights(count);
    let finite = true;
    for (let i = 0; i < end; i += 8) {
      const r0 = product(a[i] as number, b[i] as number);
      const r1 = product(a[i + 1] as number, b[i + 1] as number);
      const r2 = product(a[i + 2] as number, b[i + 2] as number);
      const r3 = product(a[i + 3] as number, b[i + 3] as number);
      const r4 = product(a[i + 4] as number, b[i + 4] as number);
      const r5 = product(a[i + 5] as number, b[i + 5] as number);
      const r6 = product(a[i + 6] as number, b[i + 6] as number);
      const r7 = product(a[i + 7] as number, b[i + 7] as number);
      r[i] = r0;
      r[i + 1] = r1;
      r[i + 2] = r2;
      r[i + 3] = r3;
      r[i + 4] = r4;
      r[i + 5] = r5;
      r[i + 6] = r6;
      r[i + 7] = r7;
      if (isOff(r0, r1, r2, r3) || isOff(r4, r5, r6, r7)) finite = false;
    }
    out.clean = finite;
    if (!finite) tell(count, out, args, notFinite);
  };
}

function divide(out: Lane, args: readonly [Lane, Lane]): Kernel {
  const r = out.numbers;
  const [{ numbers: a }, { numbers: b }] = args;
  return (count) => {
    const end = inEights(count);
    let finite = true;
    for (let i = 0; i < end; i += 8) {
      const r0 = quotient(a[i] as number, b[i] as number);
      const r1 = quotient(a[i + 1] as number, b[i + 1] as number);
      const r2 = quotient(a[i + 2] as number, b[i + 2] as number);
      const r3 = quotient(a[i + 3] as number, b[i + 3] as number);
      const r4 = quotient(a[i + 4] as number, b[i + 4] as number);
      const r5 = quotient(a[i + 5] as number, b[i + 5] as number);
      const r6 = quotient(a[i + 6] as number, b[i + 6] as number);
      const r7 = quotient(a[i + 7] as number, b[i + 7] as number);
      r[i] = r0;
      r[i + 1] = r1;
      r[i + 2] = r2;
      r[i + 3] = r3;
      r[i + 4] = r4;
      r[i + 5] = r5;
      r[i + 6] = r6;
      r[i + 7] = r7;
      if (isOff(r0, r1, r2, r3) || isOff(r4, r5, r6, r7)) finite = false;
    }
    out.clean = finite;
    if (!finite) tell(count, out, args, (i) => (b[i] === 0 ? DIVISION : NOT_FINITE));
  };
}

function power(out: Lane, args: readonly [Lane, Lane]): Kernel {
  const r = out.numbers;
  const [{ numbers: a }, { numbers: b }] = args;
  return (count) => {
    const end = inEights(count);
    let finite = true;
    for (let i = 0; i < end; i += 4) {
      const r0 = raised(a[i] as number, b[i] as number);
      const r1 = raised(a[i + 1] as number, b[i + 1] as number);
      const r2 = raised(a[i + 2] as number, b[i + 2] as number);
      const r3 = raised(a[i + 3] as number, b[i + 3] as number);
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

/**
 * Whether the machine's power of 2 is the product to the last bit, as it is wherever it was tried. Asked with an
 * exponent that no compiler can see through.
 */
const squaresAreProducts = ((): boolean => {
  const exponent = Number.parseFloat('2');
  for (let i = 1; i <= 2000; i++) {
    const base = Math.sqrt(i) * 10 ** ((i % 80) - 40);
    if (base ** exponent !== base * base) return false;
  }
  return true;
})();

function negate(out: Lane, args: readonly [Lane]): Kernel {
  const r = out.numbers;
  const [arg] = args;
  const { numbers: a } = arg;
  return (count) => {
    for (let i = 0; i < count; i++) r[i] = 0 - (a[i] as number);
    out.clean = arg.clean;
    if (!arg.clean) tell(count, out, args, notFinite);
  };
}

function percent(out: Lane, args: readonly [Lane]): Kernel {
  const r = out.numbers;
  const [arg] = args;
  const { numbers: a } = arg;
  return (count) => {
    for (let i = 0; i < count; i++) r[i] = (a[i] as number) / 100 + 0;
    out.clean = arg.clean;
    if (!arg.clean) tell(count, out, args, notFinite);
  };
}

const one =
  (make: (out: Lane, args: readonly [Lane]) => Kernel): Fast =>
  (out, [a]) =>
    a === undefined ? undefined : make(out, [a]);

const two =
  (make: (out: Lane, args: readonly [Lane, Lane]) => Kernel): Fast =>
  (out, [a, b]) =>
    a === undefined || b === undefined ? undefined : make(out, [a, b]);

/** Squares are by far the commonest powers. */
const powerOrSquare = (out: Lane, args: readonly [Lane, Lane]): Kernel =>
  squaresAreProducts && args[1].fixed === 2 ? multiply(out, [args[0], args[0]]) : power(out, args);

export const arithmeticKernels: Readonly<Record<string, Fast>> = {
  '+': two(add),
  '-': two(subtract),
  '*': two(multiply),
  '/': two(divide),
  '^': two(powerOrSquare),
  POWER: two(powerOrSquare),
  negate: one(negate),
  percent: one(percent),
};
