import type { Lane } from '../lanes.ts';
import { type Fault, NOT_FINITE } from '../scalar.ts';
import { type Fast, inEights, type Kernel, tell } from './kernel.ts';

const notFinite = () => NOT_FINITE;

function choose(out: Lane, args: readonly [Lane, Lane, Lane]): Kernel {
  const r = out.numbers;
  const [condition, then, otherwise] = args;
  const c = condition.numbers;
  const a = then.numbers;
  const b = otherwise.numbers;
  return (count) => {
    out.clean = condition.clean && then.clean && otherwise.clean;
    if (out.clean) {
      const end = inEights(count);
      for (let i = 0; i < end; i += 4) {
        r[i] = (c[i] !== 0 ? a[i] : b[i]) as number;
        r[i + 1] = (c[i + 1] !== 0 ? a[i + 1] : b[i + 1]) as number;
        r[i + 2] = (c[i + 2] !== 0 ? a[i + 2] : b[i + 2]) as number;
        r[i + 3] = (c[i + 3] !== 0 ? a[i + 3] : b[i + 3]) as number;
      }
      return;
    }
    for (let i = 0; i < count; i++) {
      const from = c[i] !== c[i] ? condition : c[i] !== 0 ? then : otherwise;
      const value = from.numbers[i] as number;
      r[i] = value;
      if (value !== value) out.faults[i] = from.faults[i] as Fault;
    }
  };
}

function instead(out: Lane, [value, other]: readonly [Lane, Lane]): Kernel {
  const r = out.numbers;
  const a = value.numbers;
  const b = other.numbers;
  return (count) => {
    if (value.clean) {
      for (let i = 0; i < count; i++) r[i] = a[i] as number;
      out.clean = true;
      return;
    }
    for (let i = 0; i < count; i++) {
      const taken = (a[i] === a[i] ? a[i] : b[i]) as number;
      r[i] = taken;
      if (taken !== taken) out.faults[i] = other.faults[i] as Fault;
    }
    out.clean = other.clean;
  };
}

/** AND and OR: `stop` is the answer that one argument is enough for. */
function gather(stop: 0 | 1, out: Lane, args: readonly Lane[]): Kernel {
  const r = out.numbers;
  return (count) => {
    const end = inEights(count);
    r.fill(1 - stop, 0, end);
    let clean = true;
    for (const arg of args) {
      const a = arg.numbers;
      clean = clean && arg.clean;
      for (let i = 0; i < end; i++) if (Number(a[i] !== 0) === stop) r[i] = stop;
    }
    out.clean = clean;
    if (clean) return;
    for (const { numbers } of args) {
      for (let i = 0; i < count; i++) if (numbers[i] !== numbers[i]) r[i] = Number.NaN;
    }
    tell(count, out, args, notFinite);
  };
}

function not(out: Lane, [arg]: readonly [Lane]): Kernel {
  const r = out.numbers;
  const a = arg.numbers;
  return (count) => {
    for (let i = 0; i < count; i++) r[i] = a[i] === 0 ? 1 : 0;
    out.clean = arg.clean;
    if (arg.clean) return;
    for (let i = 0; i < count; i++) if (a[i] !== a[i]) r[i] = Number.NaN;
    tell(count, out, [arg], notFinite);
  };
}

export const choiceKernels: Readonly<Record<string, Fast>> = {
  IF: (out, [condition, then, otherwise]) =>
    condition === undefined || then === undefined || otherwise === undefined
      ? undefined
      : choose(out, [condition, then, otherwise]),
  IFERROR: (out, [value, other]) =>
    value === undefined || other === undefined ? undefined : instead(out, [value, other]),
  AND: (out, args) => gather(0, out, args),
  OR: (out, args) => gather(1, out, args),
  NOT: (out, [arg]) => (arg === undefined ? undefined : not(out, [arg])),
};
