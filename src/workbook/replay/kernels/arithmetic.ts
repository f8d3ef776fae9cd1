import { OPTIONS } from '../../engine-options.ts';
import type { Lane } from '../lanes.ts';
import { DIVISION, NOT_FINITE } from '../scalar.ts';
import { type Fast, type Kernel, tell } from './kernel.ts';

const EPSILON = OPTIONS.precisionEpsilon;

const notFinite = () => NOT_FINITE;

// Each loop is written out: one loop that is handed its operation runs several times slower.

function add(out: Lane, args: readonly [Lane, Lane]): Kernel {
  const r = out.numbers;
  const [{ numbers: a }, { numbers: b }] = args;
  return (count) => {
    let finite = true;
    for (let i = 0; i < count; i++) {
      const left = a[i] as number;
      const sum = left + (b[i] as number);
      const snapped = Math.abs(sum) < EPSILON * Math.abs(left) ? 0 : sum;
      r[i] = snapped;
      if (snapped - snapped !== 0) finite = false;
    }
    out.clean = finite;
    if (!finite) tell(count, out, args, notFinite);
  };
}

function subtract(out: Lane, args: readonly [Lane, Lane]): Kernel {
  const r = out.numbers;
  const [{ numbers: a }, { numbers: b }] = args;
  return (count) => {
    let finite = true;
    for (let i = 0; i < count; i++) {
      const left = a[i] as number;
      const rest = left - (b[i] as number);
      const snapped = Math.abs(rest) < EPSILON * Math.abs(left) ? 0 : rest;
      r[i] = snapped;
      if (snapped - snapped !== 0) finite = false;
    }
    out.clean = finite;
    if (!finite) tell(count, out, args, notFinite);
  };
}

function multiply(out: Lane, args: readonly [Lane, Lane]): Kernel {
  const r = out.numbers;
  const [{ numbers: a }, { numbers: b }] = args;
  return (count) => {
    let finite = true;
    for (let i = 0; i < count; i++) {
      // Adding 0 turns a negative zero into 0.
      const product = (a[i] as number) * (b[i] as number) + 0;
      r[i] = product;
      if (product - product !== 0) finite = false;
    }
    out.clean = finite;
    if (!finite) tell(count, out, args, notFinite);
  };
}

function divide(out: Lane, args: readonly [Lane, Lane]): Kernel {
  const r = out.numbers;
  const [{ numbers: a }, { numbers: b }] = args;
  return (count) => {
    let finite = true;
    for (let i = 0; i < count; i++) {
      const quotient = (a[i] as number) / (b[i] as number) + 0;
      r[i] = quotient;
      if (quotient - quotient !== 0) finite = false;
    }
    out.clean = finite;
    if (!finite) tell(count, out, args, (i) => (b[i] === 0 ? DIVISION : NOT_FINITE));
  };
}

function power(out: Lane, args: readonly [Lane, Lane]): Kernel {
  const r = out.numbers;
  const [{ numbers: a }, { numbers: b }] = args;
  return (count) => {
    let finite = true;
    for (let i = 0; i < count; i++) {
      const base = a[i] as number;
      // Whatever to the power of 0 is 1, an error too, which must stay one.
      const result = base === base ? base ** (b[i] as number) + 0 : Number.NaN;
      r[i] = result;
      if (result - result !== 0) finite = false;
    }
    out.clean = finite;
    if (!finite) tell(count, out, args, notFinite);
  };
}

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

export const arithmeticKernels: Readonly<Record<string, Fast>> = {
  '+': two(add),
  '-': two(subtract),
  '*': two(multiply),
  '/': two(divide),
  '^': two(power),
  POWER: two(power),
  negate: one(negate),
  percent: one(percent),
};
